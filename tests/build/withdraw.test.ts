// A page is withdrawn and a notice published, whatever else is half written in the club's folder. Otherwise nothing changes.
import assert from 'node:assert/strict';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, test } from 'vitest';
import { fingerprint } from '../../src/integration/fingerprint.ts';
import { runDesk } from '../setup/built-site.ts';
import { change, openWorkshop } from './workshop.ts';

const { folder, copy, build } = openWorkshop();
const WHY = 'its second step can mislead: do not follow it';
const out = join(folder, 'site', 'out');
const club = copy('southern');
const page = join(club, 'articles', 'manuka-and-kanuka.mdx');
const read = (path: string): string => readFileSync(join(out, path), 'utf8');
const withdraw = (...typed: string[]) => runDesk('withdraw', [...typed, '--content', club, '--out', out]);

beforeAll(async () => {
  const draft = '---\ntitle: "Begun\ndraft: true\nsummary:\n---\n\n<Figure id="none" /> ![x](none.jpg)\n';
  writeFileSync(join(club, 'articles', 'begun.mdx'), draft);
  writeFileSync(join(club, 'articles', 'half.mdx'), draft.replace('"Begun', 'Half'));
  const ran = await build(club, out, ['--base', '/bees/', '--site', 'https://club.example']);
  assert.equal(ran.code, 0, ran.output);
  assert.match(ran.output, /^2 drafts have \d+ blanks? and \d+ faults; they are not published\.$/m);
});

test('a refused command changes no file', async () => {
  const state = () => fingerprint({ club, out });
  const held = state();
  for (const [typed, code, sentence] of [
    [[], 2, /^withdraw needs the entry and the reason: npm run withdraw -- /],
    [['articles/manuka-and-kanuka'], 2, /^withdraw needs the reason, which readers will see: /],
    [['articles/manuka-and-kanuka', ' .. '], 2, /^withdraw needs the reason, which readers will see: /],
    [['articles/manuka-and-kanuka', '2026-05-14, why'], 2, /^Write the reason alone; the day is today, or --on 2026-05-14\.$/m],
    [['articles/manuka-and-kanka', WHY], 1, /^There is no articles\/manuka-and-kanka\.mdx; did you mean articles\/manuka-and-kanuka\?$/m],
    [['articles/begun', WHY], 1, /^articles\/begun\.mdx is a draft: /],
    [['articles/half', WHY], 1, /^articles\/half\.mdx is a draft: /],
  ] as const) {
    const ran = await withdraw(...typed);
    assert.equal(ran.code, code, ran.output);
    assert.match(ran.output, sentence);
  }
  assert.equal(state(), held);
});

test('a page is withdrawn and a notice published beside faulty files, which stay in their last good state', async () => {
  const words = readFileSync(page, 'utf8').replace('title:', '# kept as it is\ntitle:').replaceAll('\n', '\r\n');
  writeFileSync(page, words);
  change(join(club, 'bulletins', 'wasps.mdx'), '## The field test', '## A field test');
  change(join(club, 'articles', 'stings.mdx'), 'Seconds count', 'A newer sentence. Seconds count');
  writeFileSync(join(club, 'articles', 'unfinished.mdx'), '---\ntitle: Unfinished\n---\nWords\n');
  mkdirSync(join(club, 'notices'), { recursive: true });
  writeFileSync(
    join(club, 'notices', 'recall.yaml'),
    'title: Foundation is called back\nkind: recall\nsays:\n  - Do not use it.\nfrom: 2026-05-14\nuntil: 2026-06-14\nconcerns: [every page]\nask: mentor\nby: almanac editor\n',
  );
  const ran = await withdraw('/know-how/manuka-and-kanuka/', WHY, '--on', '2026-05-14');
  assert.equal(ran.code, 0, ran.output);
  assert.match(ran.output, /^bulletins\/wasps\.mdx:25:1 bulletin: /m);
  assert.match(ran.output, /^ {2}bulletins\/wasps\.mdx {2}in the last good state$/m);
  assert.match(ran.output, /^ {2}articles\/unfinished\.mdx {2}not at all, because no good state of it is known$/m);
  assert.match(
    ran.output,
    /^articles\/manuka-and-kanuka\.mdx is withdrawn from 14 May 2026 on: its second step can mislead: do not follow it$/m,
  );
  const gone = read('know-how/manuka-and-kanuka/index.html');
  assert.match(gone, /taken down on 14\sMay\s2026/);
  assert.match(gone, /Its second step can mislead: do not follow it\./);
  assert.match(read('pests/wasps/index.html'), /The field test/);
  assert.match(read('know-how/stings/index.html'), /A newer sentence\./);
  assert.match(read('notices/index.html'), /Foundation is called back/);
  assert.ok(!existsSync(join(out, 'know-how', 'unfinished')));
  assert.match(read('manifest.webmanifest'), /"scope": "\/bees\/"/);
  assert.match(read('sitemap.xml'), /https:\/\/club\.example\/bees\//);
  assert.equal(JSON.parse(read('edition.json')).day, '2026-05-14');
  const line = `withdrawn: ${JSON.stringify(`2026-05-14, ${WHY}`)}\r\n`;
  assert.equal(readFileSync(page, 'utf8').replace(line, ''), words, 'every other byte of its file is as it was');
});

test('a second withdrawal changes nothing, and the next builds keep the page withdrawn', { tags: ['slow'] }, async () => {
  const again = await withdraw('articles/manuka-and-kanuka', WHY);
  assert.deepEqual([again.code, /has a line already: withdrawn: /.test(again.output)], [1, true], again.output);
  assert.equal((await build(club, out)).code, 1, 'an ordinary build still waits for the faults');
  const ran = await build(club, out, ['--last-good']);
  assert.equal(ran.code, 0, ran.output);
  assert.match(read('know-how/manuka-and-kanuka/index.html'), /taken down on 14\sMay\s2026/);
});

test('an obstacle is named, and neither file nor site changes', async () => {
  const bare = copy('southern');
  change(join(bare, 'club.yaml'), 'hemisphere: south', 'hemisphere: down');
  const place = join(folder, 'bare', 'out');
  const held = fingerprint({ bare });
  const ran = await runDesk('withdraw', ['articles/manuka-and-kanuka', WHY, '--content', bare, '--out', place]);
  assert.equal(ran.code, 1);
  assert.match(ran.output, /^There is no last good state on this computer/m);
  assert.match(ran.output, /^ {2}club\.yaml:\d+:\d+ field: hemisphere: /m);
  assert.match(ran.output, /^articles\/manuka-and-kanuka\.mdx was not withdrawn, and its file is unchanged\.$/m);
  assert.doesNotMatch(ran.output, /^\s+at .+:\d+:\d+|node:internal|undefined/m);
  assert.ok(!existsSync(place));
  assert.equal(fingerprint({ bare }), held);
  rmSync(bare, { recursive: true });
});
