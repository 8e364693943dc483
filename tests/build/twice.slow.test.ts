// Two builds of one input, in other folders and under other clocks, give the same bytes.
import assert from 'node:assert/strict';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, sep } from 'node:path';
import { onTestFinished, test } from 'vitest';
import { sourceFingerprint } from '../../src/integration/fingerprint.ts';
import { projectFolder } from '../../src/cli/paths.ts';
import { runDesk } from '../setup/built-site.ts';

const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((item) => item.isFile())
    .map((item) =>
      join(item.parentPath, item.name)
        .slice(folder.length + 1)
        .split(sep)
        .join('/'),
    )
    .sort();

test('a second build of one input, in another folder, gives the same bytes', { timeout: 180_000, tags: ['slow'] }, async (context) => {
  const content = join(projectFolder, 'content', 'demo-club');
  const work = mkdtempSync(join(tmpdir(), 'almanac-twice-'));
  onTestFinished(() => rmSync(work, { recursive: true, force: true }));
  const built = async (out: string): Promise<Map<string, string>> => {
    const { code, output } = await runDesk(
      'build',
      ['--content', content, '--out', out, '--base', '/club/', '--site', 'https://club.example'],
      { TZ: out.endsWith('second') ? 'Asia/Tokyo' : 'America/New_York' },
    );
    assert.equal(code, 0, output);
    return new Map(filesIn(out).map((file) => [file, readFileSync(join(out, file)).toString('base64')]));
  };
  // The almanac may be edited during the test, and then the input is not the same.
  for (let turn = 0; turn < 3; turn++) {
    const input = sourceFingerprint(projectFolder, content);
    const first = await built(join(work, `${turn}`, 'first'));
    const second = await built(join(work, `${turn}`, 'deeper', 'second'));
    if (sourceFingerprint(projectFolder, content) !== input) continue;
    assert.deepEqual([...second.keys()], [...first.keys()]);
    assert.deepEqual(
      [...first].filter(([file, bytes]) => second.get(file) !== bytes).map(([file]) => file),
      [],
    );
    assert.ok(
      first.has('sitemap.xml') &&
        first.has('club.ics') &&
        first.has('search/words.json') &&
        first.has('handbook.epub') &&
        first.has('handbook.html'),
    );
    return;
  }
  context.skip('the project was changed during every try');
});
