// A process is killed before and after every call that moves or deletes a folder: the old site or the new one is always complete.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import { clearUp, swapSite } from '../../../src/cli/swap.ts';

const folder = mkdtempSync(join(tmpdir(), 'in-place-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const module = JSON.stringify(new URL('../../../src/cli/swap.ts', import.meta.url).href);

function site(path: string, words: string): void {
  for (const name of ['edition.json', join('about', 'index.html'), join('year', 'index.html')]) {
    mkdirSync(join(path, name, '..'), { recursive: true });
    writeFileSync(join(path, name), words);
  }
}

/** The content of all files of a site: "mixed" where they differ, "none" where some are missing. */
function wordsOf(path: string): string {
  try {
    const editions = ['edition.json', 'about/index.html', 'year/index.html'].map((name) => readFileSync(join(path, name), 'utf8'));
    return new Set(editions).size === 1 ? editions[0]! : 'mixed';
  } catch {
    return 'none';
  }
}

/** Swaps a new site into place in a process that dies at the given call. Returns whether it died. */
function killedAt(place: string, moment: number): boolean {
  const code = `import fs from 'node:fs'; import { syncBuiltinESMExports } from 'node:module'; import { join } from 'node:path';
    let left = ${moment};
    const die = () => { if (left-- === 0) process.kill(process.pid, 'SIGKILL'); };
    for (const name of ['renameSync', 'rmSync']) { const own = fs[name]; fs[name] = (...given) => {
      die();
      // A folder in deletion has lost some of its files already.
      if (name === 'rmSync') { for (const lost of ['site', 'former']) own(join(given[0], lost, 'about'), { recursive: true, force: true }); die(); }
      own(...given); die();
    }; }
    syncBuiltinESMExports();
    const { swapSite, removeWork, workFolder } = await import(${module});
    const out = ${JSON.stringify(join(place, 'dist'))}, work = workFolder(out);
    fs.mkdirSync(work); fs.cpSync(${JSON.stringify(join(place, 'new'))}, join(work, 'site'), { recursive: true });
    swapSite(join(work, 'site'), out, work); removeWork(work);`;
  return spawnSync(process.execPath, ['--input-type=module', '--eval', code]).signal === 'SIGKILL';
}

test('killed at every moment of the swap', () => {
  const seen: string[] = [];
  for (let moment = 0, killed = true; killed; moment += 1) {
    const place = join(folder, `moment-${moment}`);
    site(join(place, 'new'), 'new');
    site(join(place, 'dist'), 'old');
    killed = killedAt(place, moment);
    rmSync(join(place, 'new'), { recursive: true });
    const before = wordsOf(join(place, 'dist'));
    clearUp(join(place, 'dist'));
    const now = wordsOf(join(place, 'dist'));
    if (before !== 'none') assert.equal(now, before);
    assert.deepEqual(readdirSync(place), ['dist'], `moment ${moment}: nothing is left beside it`);
    seen.push(`${before} ${now}`);
  }
  assert.ok(seen.length > 8, `${seen.length} moments`);
  // Between its two renames there is briefly no site under its name. The old one is beside it and is restored.
  assert.deepEqual(
    seen.filter((each, index) => each !== seen[index - 1]),
    ['old old', 'none old', 'new new'],
  );
});

test('a failed move leaves the old site in place', () => {
  const out = join(folder, 'stays', 'dist');
  site(out, 'old');
  assert.throws(() => swapSite(join(folder, 'nowhere'), out, join(folder, 'stays')), /ENOENT/);
  assert.equal(wordsOf(out), 'old');
  assert.deepEqual(readdirSync(join(folder, 'stays')), ['dist']);
});

test('folders with other names beside it stay', () => {
  const place = join(folder, 'others');
  const others = ['dist.old', 'dist.old-1.zip', 'dist.building-', 'my.dist.old-12', 'dist2.old-12', 'xdist.building-3'];
  for (const name of [...others, 'dist.building-1', 'dist.old-2', 'dist']) site(join(place, name), name);
  clearUp(join(place, 'dist'));
  assert.deepEqual(readdirSync(place).sort(), [...others, 'dist'].sort());
});
