// Astro's own commands build the whole site, without any of our commands.
import assert from 'node:assert/strict';
import { spawn, type ChildProcess } from 'node:child_process';
import { existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import { ENGINE, WORDS } from '../../shared/words/search-files.ts';
import { projectFolder } from '../../src/cli/paths.ts';
import { fingerprint } from '../../src/integration/fingerprint.ts';
import { builtFixture, type Ran } from '../setup/built-site.ts';
import { change, contentsOf, openWorkshop } from './workshop.ts';

const { copy } = openWorkshop();
const club = copy('southern');
// Astro moves its files by renaming, so the output must be on the project's disk.
const out = join(projectFolder, '.almanac', `astro-alone-${process.pid}`);
afterAll(() => rmSync(out, { recursive: true, force: true }));

function astro(command: string, ...typed: string[]): { child: ChildProcess; output: () => string; ended: Promise<Ran> } {
  const child = spawn(
    process.execPath,
    [join(projectFolder, 'node_modules', 'astro', 'bin', 'astro.mjs'), command, '--outDir', out, ...typed],
    {
      cwd: projectFolder,
      env: { ...process.env, ALMANAC_CONTENT: club, ASTRO_TELEMETRY_DISABLED: '1', NO_COLOR: '1' },
    },
  );
  let output = '';
  for (const stream of [child.stdout, child.stderr]) stream.setEncoding('utf8').on('data', (text: string) => (output += text));
  const ended = new Promise<Ran>((resolve, reject) => child.on('error', reject).on('close', (code) => resolve({ code, output })));
  return { child, output: () => output, ended };
}

/** Waits for the address that a server prints. */
async function addressOf({ child, output, ended }: ReturnType<typeof astro>): Promise<string> {
  const printed = new Promise<string>((resolve) => {
    const look = (): void => {
      const address = /http:\/\/(?:localhost|127\.0\.0\.1):\d+\//.exec(output())?.[0];
      if (address) resolve(address);
    };
    for (const stream of [child.stdout!, child.stderr!]) stream.on('data', look);
  });
  return Promise.race([printed, ended.then(({ output: said }) => assert.fail(said))]);
}

test('astro build writes every file of npm run build, byte for byte, and astro preview serves them', async () => {
  const { code, output } = await astro('build').ended;
  assert.equal(code, 0, output);
  for (const line of [/^Checked: \d+ files, no fault\.$/m, /^Search: \d+ pages and entries\.$/m, /^Offline copy: \d+ files, /m, /^Book: /m])
    assert.match(output, line);
  const [ours, theirs] = [contentsOf((await builtFixture('southern')).folder), contentsOf(out)];
  assert.deepEqual([...theirs.keys()], [...ours.keys()]);
  assert.ok(theirs.size > 100, `${theirs.size} files`);
  assert.deepEqual(
    [...theirs].filter(([path, text]) => ours.get(path) !== text).map(([path]) => path),
    [],
  );
  const preview = astro('preview', '--port', '0');
  try {
    const address = await addressOf(preview);
    for (const path of ['', 'lists/', ENGINE, WORDS, 'worker.js', 'handbook.html', 'club.ics', 'manifest.webmanifest']) {
      const answer = await fetch(address + path);
      assert.equal(answer.status, 200, path);
      assert.ok((await answer.text()).length > 100, path);
    }
  } finally {
    preview.child.kill();
    await preview.ended;
  }
});

test('astro build stops at faults: all are printed, exit code 1, no stack, and the former site stays', async () => {
  const former = existsSync(out) ? fingerprint({ out }) : '';
  change(join(club, 'articles', 'stings.mdx'), 'subject: people', 'subject: poeple');
  change(join(club, 'words', 'autumn.yaml'), 'meaning:', 'meanning:');
  const { code, output } = await astro('build').ended;
  change(join(club, 'articles', 'stings.mdx'), 'subject: poeple', 'subject: people');
  change(join(club, 'words', 'autumn.yaml'), 'meanning:', 'meaning:');
  assert.equal(code, 1, output);
  assert.match(output, /^articles\/stings\.mdx:4:10 field: subject: found "poeple"; write /m);
  assert.match(output, /^words\/autumn\.yaml:2:1 [a-z-]+: meanning: /m);
  assert.match(output, /^2 faults\. Nothing was built; the last good site is unchanged\.$/m);
  assert.doesNotMatch(output, /^\s+at .+:\d+:\d+|node:internal|Stack trace|ContentError/m);
  assert.equal(existsSync(out) ? fingerprint({ out }) : '', former);
});

test('astro dev shows pages, and above each the panel of the preview', async () => {
  change(join(club, 'words', 'autumn.yaml'), 'meaning:', 'meanning:');
  const dev = astro('dev', '--port', '0');
  try {
    const address = await addressOf(dev);
    const panel = async (place: string): Promise<string> => (await fetch(`${address}almanac-preview.html?page=/${place}`)).text();
    assert.match(await panel('words/'), /This page has 1 fault .*<li><code>words\/autumn\.yaml:2:1<\/code> [a-z-]+: meanning: /);
    assert.match(await panel('lists/'), /This page has no fault\..*<summary>1 fault in other files<\/summary>/);
    assert.match(dev.output(), /^words\/autumn\.yaml:2:1 [a-z-]+: meanning: /m);
    // Astro writes its list of pages half a second after the collections are filled, and keeps the answer to an earlier request.
    await new Promise((done) => setTimeout(done, 2000));
    const first = await (await fetch(address)).text();
    assert.match(first, /<main id="text"/);
    assert.match(await (await fetch(`${address}know-how/stings/`)).text(), /data-written="articles\/stings\.mdx:\d+"/);
  } finally {
    dev.child.kill();
    await dev.ended;
    change(join(club, 'words', 'autumn.yaml'), 'meanning:', 'meaning:');
  }
});
