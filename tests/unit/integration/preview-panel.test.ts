// The panel above each page of the preview: the page's own faults first, hints, drafts with their blanks, and the files of its texts.
import assert from 'node:assert/strict';
import { fromHtml } from 'hast-util-from-html';
import type { Element, Nodes } from 'hast';
import { test } from 'vitest';
import { hintsOf } from '../../../src/checks/check.ts';
import { foundIn } from '../../../src/checks/drafts.ts';
import { previewPanel } from '../../../src/integration/preview-panel.ts';
import { readFolder } from '../../../src/source/folder.ts';
import { withClub } from '../source/layered.ts';

const REVIEW = 'checked: 2026-05-01\nnext-check: 2027-05-01\nby: mentor\n';
const ADDED = { 'articles/swarms.add.mdx': `---\n${REVIEW}---\nOurs hang in the lindens.\n` };
const DRAFT = { 'articles/our-bees.mdx': '---\ntitle: Our <b>bees</b>\nsummary:\ndraft: true\n---\n\nWords.\n' };

/** The panel at a place as lines of words; a fold's lines are indented. */
function panel(files: Record<string, string>, place: string, land = 'US-OH'): { html: string; lines: string[] } {
  const html = withClub(land, files, (directory) => {
    const folder = readFolder(directory);
    return previewPanel({ folder, ...foundIn(folder), hints: hintsOf(folder) }, place, '/');
  });
  const lines: string[] = [];
  const walk = (node: Nodes, indent: string): void => {
    if (node.type === 'element' && node.tagName === 'style') return;
    if (node.type === 'element' && ['h2', 'p', 'summary'].includes(node.tagName)) lines.push(indent + wordsOf(node));
    else if (node.type === 'element' && node.tagName === 'li') lines.push(`${indent}- ${wordsOf(node)}`);
    else if ('children' in node)
      for (const child of node.children) walk(child, node.type === 'element' && node.tagName === 'details' ? '  ' : indent);
  };
  walk(fromHtml(html, { fragment: true }), '');
  return { html, lines };
}

const wordsOf = (node: Element): string =>
  node.children
    .map((child) => (child.type === 'text' ? child.value : child.type === 'element' ? ` ${wordsOf(child)} ` : ''))
    .join('')
    .replace(/\s+/g, ' ')
    .trim();

test('a club without a fault has a quiet panel', () => {
  const { html, lines } = panel({}, 'know-how/stings/');
  assert.deepEqual(lines.slice(0, 2), ['Preview', 'No faults.']);
  assert.match(html, /^<section class="preview" /);
  assert.ok(!lines.some((line) => /fault.* in other files/.test(line)), lines.join('\n'));
});

test('faults of the page that is looked at come first; those of other files are in a fold', () => {
  const files = {
    'articles/swarms.add.mdx': `---\n${REVIEW}---\nSee [this](/know-how/nowhere/).\n`,
    'words/odd.yaml': `word: odd\nmeanning: what it means\n${REVIEW}`,
  };
  const [at, other] = [/^- articles\/swarms\.add\.mdx:\d+:\d+ link: /, /^ {2}- words\/odd\.yaml:\d+:\d+ /];
  const here = panel(files, 'know-how/swarms/').lines;
  assert.match(here[1]!, /^This page has 1 fault /);
  assert.match(here[2]!, at);
  assert.match(here[3]!, /^ {2}\d faults? in other files$/);
  assert.match(here[4]!, other);
  const elsewhere = panel(files, 'know-how/old-comb/').lines;
  assert.match(elsewhere[1]!, /^This page has no fault\./);
  assert.ok(elsewhere.some((line) => /^ {2}- articles\/swarms\.add\.mdx:/.test(line)));
  const list = panel(files, 'words/').lines;
  assert.match(list[2]!, /^- words\/odd\.yaml:/, 'a list shows the faults of its entries');
});

test('a page whose file cannot be read has its faults at the address that it would have', () => {
  const { lines } = panel({ 'articles/broken.mdx': '---\ntitle: "Open\n' }, 'know-how/broken/');
  assert.match(lines[1]!, /^This page has \d+ faults? /);
  assert.match(lines[2]!, /^- articles\/broken\.mdx:/);
});

test('drafts are listed with a link and their blanks; words of a file never become markup', () => {
  const { html, lines } = panel(DRAFT, 'know-how/stings/');
  assert.equal(lines[1], 'No faults.', 'a draft stops nothing');
  const at = lines.findIndex((line) => /^ {2}1 draft, \d+ blanks$/.test(line));
  assert.match(lines[at + 1]!, /^ {2}- Our <b>bees<\/b> articles\/our-bees\.mdx .*line 3 field: summary: found a blank; write /);
  assert.match(html, /href="\/know-how\/our-bees\/"/);
  assert.ok(!html.includes('<b>bees'));
});

test('hints are shown, those of the page first', () => {
  const typed = (name: string) => ({ [`articles/${name}.add.mdx`]: `---\n${REVIEW}---\n#Nospace heading\n` });
  const { lines } = panel({ ...typed('old-comb'), ...typed('swarms') }, 'know-how/swarms/');
  const at = lines.findIndex((line) => /^ {2}\d+ hints$/.test(line));
  assert.match(lines[at + 2]!, /^ {2}- articles\/swarms\.add\.mdx:/, lines.join('\n'));
  assert.match(lines.slice(at + 3).join('\n'), /^ {2}- articles\/old-comb\.add\.mdx:/m);
});

test('the files of a page are told apart by book and club, with the way to change a page of a book', () => {
  const { html, lines } = panel(ADDED, 'know-how/swarms/');
  const texts = lines.slice(lines.findIndex((line) => line.includes('Whose text')));
  assert.deepEqual(texts.slice(1, 3), [
    '  A part of this page: articles/swarms.add.mdx , of your club.',
    '  A part of this page: books/common/articles/swarms.mdx , from: The common book.',
  ]);
  assert.match(texts[3]!, /npm run base -- take articles\/swarms \.$/, 'it has been added to');
  assert.match(html, /<input type="checkbox" data-preview-marks/);
  const alone = panel({}, 'know-how/swarms/').lines.join('\n');
  assert.match(alone, /This page: books\/common\/articles\/swarms\.mdx , from: [\s\S]*To add to it, write articles\/swarms\.add\.mdx/);
  const list = panel(ADDED, 'know-how/').lines.join('\n');
  assert.match(
    list,
    /This page lists the files of articles\/\.\n {2}Of your club:\n {2}- articles\/stings\.mdx\n {2}- articles\/swarms\.add\.mdx\n/,
  );
});
