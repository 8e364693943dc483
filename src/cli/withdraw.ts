/*
 * `npm run withdraw -- COLLECTION/ID "why"`: withdraws one entry and publishes that, even when other files have faults. It writes the
 * line `withdrawn:` into the entry's file and builds. Files with faults are published in their last good state. When nothing could be
 * published, the file is restored. Exit 0 when published, 1 when not, 2 for an unknown argument. The day is today in the club's time
 * zone, or --on.
 */
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { formatDay, withPlainSpaces } from '../../shared/days/show-day.ts';
import type { Day } from '../../shared/days/day.ts';
import { todayIn } from '../../shared/days/today.ts';
import { isDraft } from '../checks/place.ts';
import { filesOfLayers, languageOf, readFolder, type Folder } from '../source/folder.ts';
import { collections } from '../schemas/collections.ts';
import { argumentsOf } from './arguments.ts';
import { build } from './build.ts';
import { entryNamed } from './entry-named.ts';
import { formerAddress } from './former-address.ts';
import { chosenOutput, refusal } from './output-folder.ts';
import { withdrawnLine, withdrawnLineIn, withWithdrawnLine } from './withdrawn-line.ts';

const EXAMPLE = 'npm run withdraw -- articles/swarms "its second step can mislead"';

const { values, words } = argumentsOf('withdraw');
const [typed, reason] = words;
if (typed === undefined) stop(`withdraw needs the entry and the reason: ${EXAMPLE}.`, 2);
const why = reasonOf(reason);
const folder = readFolder(values.content);
if (!existsSync(join(values.content, 'club.yaml')) || folder.files.length === 0)
  stop("There is no club.yaml here. Write the club's folder after --content.", 1);
const named = entryNamed(
  typed,
  filesOfLayers(folder).map(({ bare }) => bare),
);
if (!named.ok) stop(named.reason, 1);
const { collection, id, path } = named.value;
if (collection === 'files')
  stop(`${path} describes a file of your own. Take files/${id}.pdf and ${path} away; check then names the pages that link to it.`, 1);
const chosen = chosenOutput(values);
if (!chosen.ok) stop(chosen.reason, 1);
const out = chosen.value;
const refused = refusal({ content: values.content, out });
if (refused) stop(refused, 1);
const file = join(values.content, path);
// A page of a book is taken down by a file of the club's own that says only that.
const isOfBook = !folder.files.includes(path);
const bytes = isOfBook ? Buffer.from('') : readFileSync(file);
if (bytes[0] === 0xff || bytes[0] === 0xfe) stop(`${path} is saved as UTF-16. Save it from your editor with the encoding UTF-8 first.`, 1);
const held = withdrawnLineIn(path, bytes);
if (held !== null)
  stop(`${path} has a line already: ${held} To publish it while other files have faults: npm run build -- --last-good.`, 1);
const entry = folder.entries.find((each) => each.collection === collection && each.id === id);
if (isOfBook && !entry) stop(`${path} is not shown here: it holds elsewhere, or the club leaves it out.`, 1);
if (folder.unreadDrafts.includes(path) || (entry && isDraft(entry)))
  stop(`${path} is a draft: no reader has seen it, and there is nothing to take down.`, 1);

const day = values.on ?? today(folder);
const line = withdrawnLine(path, day, why);
const former = formerAddress(out);
const begun = { base: values.base ?? former.base ?? '/', site: values.site ?? former.site };
mkdirSync(dirname(file), { recursive: true });
writeFileSync(file, isOfBook && path.endsWith('.mdx') ? `---\n${line}\n---\n` : withWithdrawnLine(path, bytes, line));
if (!(await build({ content: values.content, out, ...begun, 'last-good': true }))) {
  if (isOfBook) rmSync(file);
  else writeFileSync(file, bytes);
  stop(`${path} was not withdrawn, and its file is unchanged.`, 1);
}
const address = collections[collection].path;
console.log(
  [
    '',
    `${path} is withdrawn from ${withPlainSpaces(formatDay(day, languageOf(folder)))} on: ${why}`,
    isOfBook
      ? `A file of your own says so; the book's file is unchanged. Remove your file when readers may see the entry again.`
      : `Its file says so in one line, and is otherwise unchanged. Remove the line when readers may see the entry again.`,
    address === null
      ? 'No page mentions it any more; /withdrawn/ lists it with the reason.'
      : existsSync(join(out, address, id, 'index.html'))
        ? `${address}${id}/ now shows the reason and who to ask, and only /withdrawn/ links to it.`
        : `${address}${id}/ now shows nothing: the entry has faults, and no good state of it is known.`,
    `Upload ${out} now.`,
  ].join('\n'),
);

function reasonOf(given: string | undefined): string {
  const reason = (given ?? '')
    .replace(/[\s\p{Cc}]+/gu, ' ')
    .trim()
    .replace(/[\s,;]+$/, '');
  if (!/[\p{L}\p{N}]/u.test(reason)) stop(`withdraw needs the reason, which readers will see: ${EXAMPLE}.`, 2);
  if (/^\d{4}-\d\d-\d\d/.test(reason)) stop(`Write the reason alone; the day is today, or --on ${reason.slice(0, 10)}.`, 2);
  return reason;
}

/** The computer's own time zone, where the club's cannot be read. */
function today({ club }: Folder): Day {
  const zone = (club?.fields.value as { 'time-zone'?: unknown } | undefined)?.['time-zone'];
  try {
    return todayIn(String(zone), new Date());
  } catch {
    return todayIn(Intl.DateTimeFormat().resolvedOptions().timeZone, new Date());
  }
}

function stop(sentence: string, code: number): never {
  console.error(sentence);
  process.exit(code);
}
