import assert from 'node:assert/strict';
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'vitest';
import { openAlmanac, type Build } from '../../../src/cli/open-almanac.ts';
import { commandFile, smallProject } from './small-project.ts';

function project(): string {
  const folder = mkdtempSync(join(tmpdir(), 'start-'));
  mkdirSync(join(folder, 'content/demo-club'), { recursive: true });
  mkdirSync(join(folder, 'src'));
  writeFileSync(join(folder, 'content/demo-club', 'club.yaml'), 'name: Ours\n');
  return folder;
}

// Replaces the real build: writes one page with the club's file in it, and counts its calls.
function standIn(succeeds = true) {
  const asked: Parameters<Build>[0][] = [];
  const messages: string[] = [];
  const build: Build = async (options) => {
    asked.push(options);
    if (!succeeds) return false;
    mkdirSync(options.out, { recursive: true });
    writeFileSync(join(options.out, 'index.html'), readFileSync(join(options.content, 'club.yaml')));
    return true;
  };
  const open = async (folder: string) => {
    const served = await openAlmanac({
      project: folder,
      content: join(folder, 'content/demo-club'),
      out: join(folder, 'dist'),
      loadBuild: async () => build,
      tell: (line) => messages.push(line),
      port: 0,
    });
    const text = served && (await (await fetch(served.address)).text());
    await served?.close();
    return text;
  };
  return { asked, messages, open };
}

test('the club is built once, and again when its input changes', async () => {
  const folder = project();
  const { asked, messages, open } = standIn();
  assert.equal(await open(folder), 'name: Ours\n');
  assert.deepEqual(asked, [{ content: join(folder, 'content/demo-club'), out: join(folder, 'dist'), base: '/', quiet: true }]);
  await open(folder);
  assert.equal(asked.length, 1, 'nothing changed');
  writeFileSync(join(folder, 'content/demo-club', 'club.yaml'), 'name: Theirs\n');
  assert.equal(await open(folder), 'name: Theirs\n');
  writeFileSync(join(folder, 'src', 'page.astro'), '');
  await open(folder);
  writeFileSync(join(folder, 'package-lock.json'), '{}');
  await open(folder);
  assert.equal(asked.length, 4);
  assert.deepEqual(messages, Array(4).fill('Building the almanac ...'));
});

test('a changed output is built again', async () => {
  const folder = project();
  const { asked, open } = standIn();
  await open(folder);
  writeFileSync(join(folder, 'dist', 'index.html'), 'another club');
  assert.equal(await open(folder), 'name: Ours\n');
  assert.equal(asked.length, 2);
});

test('a build with faults serves nothing, and the last good output still counts once the fault is undone', async () => {
  const folder = project();
  await standIn().open(folder);
  writeFileSync(join(folder, 'content/demo-club', 'club.yaml'), 'name: [\n');
  const faulty = standIn(false);
  assert.equal(await faulty.open(folder), null);
  assert.equal(await faulty.open(folder), null);
  assert.equal(faulty.asked.length, 2);
  writeFileSync(join(folder, 'content/demo-club', 'club.yaml'), 'name: Ours\n');
  assert.equal(await faulty.open(folder), 'name: Ours\n');
  assert.equal(faulty.asked.length, 2);
});

const builds = `import { mkdirSync, writeFileSync } from 'node:fs';
export async function build({ out }: { out: string }) {
  mkdirSync(out);
  writeFileSync(out + '/index.html', 'built');
  return true;
}
`;
const fails = "export async function build() {\n  console.error('one fault');\n  return false;\n}\n";

test(
  'npm start prints one line on its output, answers there, and ends well on Ctrl-C',
  { skip: Boolean(process.platform === 'win32' && 'Windows has no such signal') },
  async () => {
    const folder = smallProject({ 'src/cli/build.ts': builds, 'content/demo-club/club.yaml': '' });
    const started = spawn(process.execPath, [commandFile(folder, 'start.ts')], { stdio: ['ignore', 'pipe', 'ignore'] });
    let output = '';
    started.stdout.setEncoding('utf8').on('data', (text) => (output += text));
    await once(started.stdout, 'data');
    const address = /^The almanac is at (http:\/\/127\.0\.0\.1:\d+\/)  \(Ctrl-C stops it\)\n$/.exec(output)?.[1];
    assert.ok(address, output);
    assert.equal(await (await fetch(address)).text(), 'built');
    started.kill('SIGINT');
    assert.deepEqual(await once(started, 'close'), [0, null]);
    assert.equal(output.split('\n').length, 2);
  },
);

test('npm start exits with 1 where the build found faults', () => {
  const folder = smallProject({ 'src/cli/build.ts': fails });
  const { status, stdout, stderr } = spawnSync(process.execPath, [commandFile(folder, 'start.ts')], { encoding: 'utf8' });
  assert.deepEqual({ status, stdout, stderr }, { status: 1, stdout: '', stderr: 'Building the almanac ...\none fault\n' });
});
