/*
 * Builds killed at moments spread over their whole length, and at every step of the swap. The output folder then contains exactly the
 * former edition or the new one. The next build succeeds and cleans up.
 */
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { existsSync, readdirSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { test } from 'vitest';
import { setTimeout as wait } from 'node:timers/promises';
import { fingerprint } from '../../src/integration/fingerprint.ts';
import { projectFolder } from '../../src/cli/paths.ts';
import { change, openWorkshop } from './workshop.ts';

const { folder, copy, build } = openWorkshop();
const clubs = [copy('southern'), copy('southern')] as const;
change(join(clubs[1], 'words', 'autumn.yaml'), 'March to May here.', 'March to early June here.');

/** The two editions, each built alone into a clean folder. */
const alone = (async () => {
  const prints: string[] = [];
  for (const [index, club] of clubs.entries()) {
    const out = join(folder, `alone-${index}`, 'out');
    const ran = await build(club, out);
    assert.equal(ran.code, 0, ran.output);
    prints.push(fingerprint({ out }));
  }
  assert.notEqual(prints[0], prints[1]);
  return prints;
})();

/** Starts a build and kills it after so many milliseconds, or at one of its steps. True where it did not end by itself. */
async function killed(content: string, out: string, after: number | null, environment: NodeJS.ProcessEnv = {}): Promise<boolean> {
  const child = spawn(process.execPath, [join(projectFolder, 'src', 'cli', 'build.ts'), '--content', content, '--out', out], {
    stdio: 'ignore',
    env: { ...process.env, ...environment },
  });
  const ended = new Promise((resolve) => child.on('exit', resolve));
  if (after !== null) await Promise.race([wait(after), ended]);
  if (after !== null) child.kill('SIGKILL');
  await ended;
  return child.signalCode === 'SIGKILL';
}

const beside = (out: string): string[] => readdirSync(dirname(out)).filter((name) => name !== basename(out));

/** A site that is moved aside between two renames must be complete, too. */
function siteOf(out: string): string {
  const aside = beside(out).filter((name) => /\.old-\d+$/.test(name));
  return fingerprint({ out: existsSync(out) || aside.length !== 1 ? out : join(dirname(out), aside[0]!) });
}

const MOMENTS = 24;

test(`killed at ${MOMENTS} moments from its start to its end`, { timeout: 900_000, tags: ['slow'] }, async (t) => {
  const prints = await alone;
  const out = join(folder, 'killed', 'out');
  assert.equal((await build(clubs[0], out)).code, 0);
  const began = performance.now();
  assert.equal((await build(clubs[1], out)).code, 0);
  const whole = performance.now() - began;
  let killedRuns = 0;
  for (let moment = 0; moment < MOMENTS; moment += 1) {
    const club = clubs[moment % 2]!;
    // The golden ratio spreads the moments evenly without a regular step.
    const after = whole * 1.05 * ((moment * 0.6180339887 + 0.03) % 1);
    if (await killed(club, out, after)) killedRuns += 1;
    assert.ok(
      prints.includes(siteOf(out)),
      `after ${after.toFixed(0)} of ${whole.toFixed(0)} ms: neither the former edition nor the new one`,
    );
    if (moment % 4 !== 3) continue;
    const next = await build(club, out);
    assert.equal(next.code, 0, next.output);
    assert.equal(fingerprint({ out }), prints[moment % 2]);
    assert.deepEqual(beside(out), []);
  }
  void t.annotate(`${killedRuns} of ${MOMENTS} were killed before they ended; a whole build took ${whole.toFixed(0)} ms`);
  assert.ok(killedRuns > MOMENTS / 2, `${killedRuns} killed`);
});

test('killed before and after each step of the swap', { timeout: 600_000, tags: ['slow'] }, async (t) => {
  const prints = await alone;
  const out = join(folder, 'in-place', 'out');
  const kill = join(folder, 'kill.cjs');
  // Counts the calls that move the site or the one it replaces, and kills the process at the requested call.
  writeFileSync(
    kill,
    `
    const fs = require('node:fs'), { syncBuiltinESMExports } = require('node:module');
    let left = Number(process.env.DIE_AT);
    const die = () => { if (left-- === 0) process.kill(process.pid, 'SIGKILL'); };
    const own = fs.renameSync;
    fs.renameSync = (from, to) => { const ours = [from, to].some((path) => String(path).startsWith(process.env.DIE_OVER)); if (ours) die(); own(from, to); if (ours) die(); };
    syncBuiltinESMExports();
  `,
  );
  assert.equal((await build(clubs[0], out)).code, 0);
  const seen: string[] = [];
  for (let step = 0; step < 20; step += 1) {
    const club = step % 2 === 0 ? 1 : 0;
    const died = await killed(clubs[club], out, null, {
      NODE_OPTIONS: `--require "${kill.replaceAll('\\', '/')}"`,
      DIE_AT: String(step),
      DIE_OVER: out,
    });
    const found = prints.indexOf(siteOf(out));
    assert.notEqual(found, -1, `step ${step}`);
    seen.push(`${existsSync(out) ? '' : 'aside '}${found === club ? 'new' : 'former'}`);
    if (!died) break;
    // The next build may itself be refused. The site that was moved aside is restored anyway.
    const refused = await build(join(folder, 'nowhere'), out);
    assert.equal(refused.code, 1);
    assert.equal(fingerprint({ out }), prints[found], 'the last good site stands');
    assert.deepEqual(beside(out), []);
    if (found !== club) assert.equal((await build(clubs[club], out)).code, 0);
  }
  void t.annotate(seen.join(', '));
  assert.ok(seen.length >= 7, `${seen.length} steps`);
  assert.deepEqual(
    seen.filter((each, index) => each !== seen[index - 1]),
    ['former', 'aside former', 'new'],
  );
});
