// Runs every command of README.md and docs/guide, word for word and in the order of each page, in a copy of the project. Each page starts
// from fresh content. `npm test` is the run that this test belongs to, so it is not started again.
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { afterAll, beforeAll, describe, test } from 'vitest';
import { projectFolder } from '../../src/cli/paths.ts';
import { goodClub } from '../fixtures/invalid/cases.ts';
import { answersFile } from '../fixtures/new-club.ts';

const work = mkdtempSync(join(tmpdir(), 'readme-'));
const copy = join(work, 'project');
const guide = 'docs/guide';
const pages = ['README.md', ...readdirSync(join(projectFolder, guide)).map((name) => `${guide}/${name}`)];
/** The commands of a page, without the explanation after two spaces. */
const commandsOf = (page: string): string[] =>
  [...readFileSync(join(projectFolder, page), 'utf8').matchAll(/^ {4}(npm .*)$/gm)].map(([, line]) => line!.split(/ {2,}/)[0]!);

beforeAll(() => {
  const left = new Set(['node_modules', 'dist', '.almanac', '.astro', '.git']);
  cpSync(projectFolder, copy, { recursive: true, filter: (path) => !left.has(relative(projectFolder, path)) });
  symlinkSync(join(projectFolder, 'node_modules'), join(copy, 'node_modules'), 'junction');
  writeFileSync(
    join(copy, 'autumn.csv'),
    'title,summary,kind,place,day,start,finish\nHoney evening,How to tell ripe honey.,meeting,Grange hall,2026-09-12,18:30,20:00\n',
  );
  writeFileSync(join(copy, 'library.csv'), 'title\nOnly a title\n');
  cpSync(answersFile('waikato'), join(copy, 'answers.yaml'));
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

/** Restores the demo club and one of our own to their state before a command wrote into them. */
function freshFolders(): void {
  for (const [from, to] of [
    [join(projectFolder, 'content'), join(copy, 'content')],
    [goodClub, join(work, 'our-club')],
  ] as const) {
    rmSync(to, { recursive: true, force: true });
    cpSync(from, to, { recursive: true });
  }
}

/** Answers to the questions of a new club, in their order. An empty one takes what is proposed. */
const TYPED = [
  ...['Fern Flat Bee Club', 'NZ-WKO', 'Fern Flat, Waikato', '', 'almanac@fern-flat.invalid', 'Pacific/Auckland', '', '', 'yes', 'yes'],
  ...['Foulbrood management agency', 'foulbrood@fern-flat.invalid', '', '', 'mentors@fern-flat.invalid', ''],
  ...['12 January 2199', '', 'Fern Flat Hall', ''],
];

/** Runs a line in a shell, and types `answers` into it. */
function run(line: string, until?: RegExp, answers: readonly string[] = []): Promise<{ code: number | null; output: string }> {
  const { NODE_ENV: _, ...environment } = process.env;
  const child = spawn(line, { cwd: copy, shell: true, env: environment, detached: process.platform !== 'win32' });
  child.stdin.end(answers.map((answer) => `${answer}\n`).join(''));
  let output = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8').on('data', (text: string) => {
      output += text;
      if (until?.test(output)) process.kill(-child.pid!, 'SIGINT');
    });
  }
  return new Promise((resolve, reject) => child.on('error', reject).on('close', (code) => resolve({ code, output })));
}

test('the guide has commands', { tags: ['slow'] }, () => assert.ok(pages.flatMap(commandsOf).length > 20));

const runs = pages.map((page) => ({ page, lines: commandsOf(page).filter((line) => line !== 'npm test') }));
for (const { page, lines } of runs.filter((each) => each.lines.length > 0))
  describe(page, () => {
    beforeAll(freshFolders);
    for (const line of lines)
      test(line, { timeout: 120_000, tags: ['slow'] }, async () => {
        if (/^npm (start|run dev)/.test(line)) {
          const { output } = await run(line, /at http:\/\/\S+/);
          assert.match(output, /at http:\/\/\S+/);
          return;
        }
        // A new club needs a folder that does not exist yet, and answers.
        if (/new -- club/.test(line)) rmSync(join(work, 'our-club'), { recursive: true, force: true });
        const { code, output } = await run(line, undefined, /new -- club(?!.*--answers)/.test(line) ? TYPED : []);
        assert.doesNotMatch(output, /^\s+at .*\(.*:\d+:\d+\)$/m, 'no stack');
        assert.equal(code, 0, output);
        if (/run new -- (?!club)/.test(line)) freshFolders();
      });
  });
