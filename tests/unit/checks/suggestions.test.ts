/* What check suggests for a link or an id that leads nowhere: what is meant, or nothing where nothing is close. */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { checkFolder } from '../../../src/checks/check.ts';
import { formatDiagnostic } from '../../../src/source/diagnostic.ts';
import { readFolder } from '../../../src/source/folder.ts';
import { publishedIn, type Published } from '../../../src/source/last-edition.ts';
import { goodClub, withChanges, type Change } from '../../fixtures/invalid/cases.ts';

/** The page on stings under another name, as an author renames a file; the list leads to it. */
const RENAMED: Change[] = [
  { file: 'articles/stings.mdx', removed: true },
  {
    file: 'articles/when-a-bee-stings.mdx',
    write:
      '---\ntitle: Stings\nsummary: Scrape the sting out.\nsubject: people\nyard: false\nwork: [drive-bees]\nsources: [leaflet]\ncertainty: likely\nask: mentor\nchecked: 2026-03-01\nnext-check: 2027-02-01\nby: education officer\n---\nScrape it off. See [mites](/pests/varroa/).\n\n## What helps\n\nCold water for <Figure id="cooling" />.',
  },
];

const found = (changes: Change[], before: readonly Published[]): string[] =>
  withChanges(changes, (directory) =>
    checkFolder(readFolder(directory), { before }).map((fault) => formatDiagnostic(fault).split('\n')[0]!),
  );

test('the titles of the last edition are read from its texts', () => {
  const names = publishedIn(goodClub).map(({ collection, id, title }) => `${collection}/${id}: ${title}`);
  assert.ok(names.includes('articles/stings: Stings'), names.join('\n'));
  assert.ok(names.includes('words/brood: brood'));
  assert.deepEqual(publishedIn(undefined), []);
});

test('a page that was renamed since the last edition is suggested, with the line that keeps its old address', () => {
  const faults = found(RENAMED, publishedIn(goodClub));
  assert.ok(
    faults.includes(
      'words/brood.yaml:3:7 link: more: found "/know-how/stings/", which is no page of this almanac; write "/know-how/when-a-bee-stings/", and in articles/when-a-bee-stings.mdx a line "formerly: [/know-how/stings/]", so that old links still lead there',
    ),
    faults.join('\n'),
  );
  assert.ok(
    faults.includes(
      'meetings/2026-06-13-yard-day.mdx:14:9 reference: reads 1: found "stings", which is not in articles/; write "when-a-bee-stings"',
    ),
    faults.join('\n'),
  );
});

test('without a last edition the title tells', () => {
  const faults = found(RENAMED, []);
  assert.ok(
    faults.some((line) => /^words\/brood\.yaml:3:7 link: .*; write "\/know-how\/when-a-bee-stings\/"$/.test(line)),
    faults.join('\n'),
  );
});

test('of two new files neither is suggested, unless one has the title', () => {
  const other: Change = {
    file: 'articles/bees-in-a-wall.mdx',
    write: RENAMED[1]!.write!.replace('title: Stings', 'title: Bees in a wall'),
  };
  const untitled = RENAMED.map((change) =>
    change.write ? { ...change, write: change.write.replace('title: Stings', 'title: First aid') } : change,
  );
  const named = (changes: Change[]): string =>
    found(changes, publishedIn(goodClub)).find((line) => line.startsWith('words/brood.yaml:3:7 link:')) ?? 'no fault';
  assert.match(named([...RENAMED, other]), /write "\/know-how\/when-a-bee-stings\/"/);
  const renamedOnly = named(
    untitled.map((change) => (change.file.endsWith('stings.mdx') && change.write ? { ...change, file: 'articles/aid.mdx' } : change)),
  );
  assert.match(renamedOnly, /write "\/know-how\/aid\/", and in articles\/aid\.mdx a line/);
  const neither = [...untitled.map((change) => (change.write ? { ...change, file: 'articles/aid.mdx' } : change)), other];
  assert.match(
    named(neither),
    /write the address of a page that is there: open it in the preview, and copy what follows the name of the site$/,
  );
});
