/*
 * Edits of a club during its build, at moments spread over the whole build. Either the site shows exactly one state of the club, or the
 * build stops with a sentence that names the file, and the last good site stays.
 */
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { appendFileSync, cpSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { test } from 'vitest';
import { setTimeout as wait } from 'node:timers/promises';
import { fingerprint } from '../../src/integration/fingerprint.ts';
import { projectFolder } from '../../src/cli/paths.ts';
import { change, openWorkshop } from './workshop.ts';
import { noise } from '../unit/pictures/made.ts';
import { fixtureFolder } from '../setup/built-site.ts';

const { folder, copy, build } = openWorkshop();

/** Each changes a valid club into another valid state. */
const EDITS: readonly { what: RegExp; edit: (club: string) => void }[] = [
  {
    what: /content\/words\/autumn\.yaml changed/,
    edit: (club) => change(join(club, 'words', 'autumn.yaml'), 'March to May here.', 'March to early June here.'),
  },
  {
    what: /content\/words\/mild\.yaml was added/,
    edit: (club) =>
      writeFileSync(
        join(club, 'words', 'mild.yaml'),
        'word: mild\nmeaning: Neither hot nor cold.\nchecked: 2026-03-02\nnext-check: 2028-02-01\nby: librarian\n',
      ),
  },
  {
    what: /content\/meetings\/2026-10-03-yard-day\.mdx was taken away/,
    edit: (club) => rmSync(join(club, 'meetings', '2026-10-03-yard-day.mdx')),
  },
];

type Ran = { code: number | null; output: string };

/** Builds. `edit` is called after so many milliseconds, or once the output matches. */
async function edited(content: string, out: string, when: number | RegExp, edit: () => void): Promise<Ran> {
  const child = spawn(process.execPath, [join(projectFolder, 'src', 'cli', 'build.ts'), '--content', content, '--out', out]);
  const ended = new Promise<number | null>((resolve) => child.on('close', resolve));
  let output = '';
  let done = false;
  const once = (): void => {
    if (!done) edit();
    done = true;
  };
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8').on('data', (text: string) => {
      output += text;
      if (when instanceof RegExp && when.test(output)) once();
    });
  }
  if (typeof when === 'number') await Promise.race([wait(when).then(once), ended]);
  const code = await ended;
  // A moment that comes after the end must not edit the club of the next build.
  done = true;
  return { code, output };
}

const fresh = (club: string): void => {
  rmSync(club, { recursive: true, force: true });
  cpSync(fixtureFolder('southern'), club, { recursive: true });
};

/** The site of a club in its current state. */
async function alone(content: string): Promise<{ print: string; took: number }> {
  const out = join(folder, `alone-${readdirSync(folder).length}`, 'out');
  const began = performance.now();
  const ran = await build(content, out);
  assert.equal(ran.code, 0, ran.output);
  return { print: fingerprint({ out }), took: performance.now() - began };
}

function stopped({ code, output }: Ran, what: RegExp): void {
  assert.equal(code, 1, output);
  assert.match(
    output,
    new RegExp(
      `^The build stopped: (?:${what.source}) while the site was built\\. Run it again\\. The last good site is unchanged\\.$`,
      'm',
    ),
  );
  assert.doesNotMatch(output, /^\s+at /m);
}

test(
  'edited between check and drawing, and between drawing and the end: it stops and names the file',
  { timeout: 300_000, tags: ['slow'] },
  async () => {
    const club = copy('southern');
    const out = join(folder, 'named', 'out');
    assert.equal((await build(club, out)).code, 0);
    const before = fingerprint({ out });
    for (const when of [/^Checked: /m, /^Pages drawn: /m]) {
      for (const { what, edit } of EDITS) {
        fresh(club);
        stopped(await edited(club, out, when, () => edit(club)), what);
        assert.equal(fingerprint({ out }), before);
        assert.deepEqual(readdirSync(dirname(out)), ['out']);
      }
    }
  },
);

test('a picture is changed or deleted during the build', { timeout: 120_000, tags: ['slow'] }, async () => {
  const club = copy('southern');
  const picture = join(club, 'articles', 'comb.png');
  const put = async (width: number): Promise<void> => writeFileSync(picture, await noise(width, 400).png().toBuffer());
  appendFileSync(join(club, 'articles', 'stings.mdx'), '\n![Dots without order](comb.png)\n');
  await put(500);
  const other = await noise(510, 400).png().toBuffer();
  const out = join(folder, 'pictured', 'out');
  const first = await build(club, out);
  assert.equal(first.code, 0, first.output);
  const before = fingerprint({ out });
  stopped(await edited(club, out, /^Pages drawn: /m, () => writeFileSync(picture, other)), /content\/articles\/comb\.png changed/);
  await put(500);
  const ran = await edited(club, out, /^Checked: /m, () => rmSync(picture));
  assert.equal(ran.code, 1, ran.output);
  assert.match(
    ran.output,
    /^The build stopped: .*comb\.png.* was (?:taken away|changed or taken away) while the site was built\. .*The last good site is unchanged\.$/m,
  );
  assert.equal(fingerprint({ out }), before);
});

const MOMENTS = 18;

test(
  `edited at ${MOMENTS} moments: the site shows one state or the other, or the build stops with a sentence`,
  { timeout: 900_000, tags: ['slow'] },
  async (t) => {
    const club = copy('southern');
    const { print: first, took } = await alone(club);
    const states: string[] = [];
    for (const { edit } of EDITS) {
      fresh(club);
      edit(club);
      states.push((await alone(club)).print);
    }
    const count = { former: 0, later: 0, stopped: 0 };
    for (let moment = 0; moment < MOMENTS; moment += 1) {
      const { what, edit } = EDITS[moment % EDITS.length]!;
      fresh(club);
      const out = join(folder, 'moments', 'out');
      const last = moment === 0 ? null : fingerprint({ out });
      const after = took * 1.05 * ((moment * 0.6180339887 + 0.02) % 1);
      const ran = await edited(club, out, after, () => edit(club));
      if (ran.code === 0) {
        const print = fingerprint({ out });
        assert.ok(print === first || print === states[moment % EDITS.length], `after ${after.toFixed(0)} ms: a mixture`);
        count[print === first ? 'former' : 'later'] += 1;
      } else {
        stopped(ran, what);
        if (last) assert.equal(fingerprint({ out }), last);
        count.stopped += 1;
      }
    }
    void t.annotate(JSON.stringify(count));
    assert.ok(count.stopped > 0 && count.former + count.later > 0, JSON.stringify(count));
  },
);

test("an editor's temporary file beside an open file stops no build", { timeout: 120_000, tags: ['slow'] }, async () => {
  const club = copy('southern');
  const ran = await edited(club, join(folder, 'open', 'out'), /^Checked: /m, () => {
    for (const name of ['.autumn.yaml.swp', 'autumn.yaml~', '~$autumn.yaml']) writeFileSync(join(club, 'words', name), 'x');
  });
  assert.equal(ran.code, 0, ran.output);
});
