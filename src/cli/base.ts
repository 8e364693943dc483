/*
 * `npm run base` shows the books of a club. `take` copies an entry of a book into the club's folder and keeps the book's text
 * beside it. `compare` shows what the book and the club have changed since. `checked` records that the club compared the book's
 * text with its sources. Exit 0 when it is done, 1 when it is not, 2 for an unknown word.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { formatDay, withPlainSpaces } from '../../shared/days/show-day.ts';
import { isDay, type Day } from '../../shared/days/day.ts';
import { todayIn } from '../../shared/days/today.ts';
import { renamedTo } from '../checks/books.ts';
import { counted, isPageKind, madeOf, pastNextCheck, summaryLines } from '../checks/summary.ts';
import { isWithdrawn } from '../checks/place.ts';
import { editionDay } from '../source/edition-day.ts';
import { filesOfLayers, languageOf, onDisk, readFolder, type Entry } from '../source/folder.ts';
import type { Collection } from '../schemas/collections.ts';
import { ADDED_TO } from '../source/overlay.ts';
import { mayBeDraft } from './new/template.ts';
import { nameOf } from '../source/layers.ts';
import { bookEntry, claimFor, hashOf, lapsedClaims } from '../source/origins.ts';
import { isOlder, takenPath, takenText } from '../source/taken.ts';
import { argumentsOf } from './arguments.ts';
import { changedLines } from './changed-lines.ts';
import { entryNamed } from './entry-named.ts';
import { nearName } from '../../shared/words/near-name.ts';

const { values, words } = argumentsOf('base');
const ACTIONS = { take, compare, checked };
const folder = readFolder(values.content);
if (!folder.club) stop("There is no club.yaml here. Write the club's folder after --content.", 1);
if (folder.books.length === 0) stop('This club uses no book: club.yaml has no line "land:", such as land: US-OH.', 1);
const [action, typed] = words;
if (action === undefined) overview();
else if (Object.hasOwn(ACTIONS, action)) ACTIONS[action as keyof typeof ACTIONS](entryOf(action, typed));
else {
  const near = nearName(action, Object.keys(ACTIONS));
  stop(`base does not know "${action}"; ${near ? `did you mean ${near}?` : `there are: ${Object.keys(ACTIONS).join(', ')}.`}`, 2);
}

function dayWords(day: Day): string {
  return withPlainSpaces(formatDay(day, languageOf(folder)));
}

function overview(): void {
  const day = editionDay(folder);
  const { fromBooks, writtenOver, addedTo, compared } = madeOf(folder);
  const gone = folder.entries.filter((entry) => entry.book === undefined && entry.over === undefined && takenText(folder, entry) !== null);
  const past = pastNextCheck(fromBooks, day);
  const withdrawn = folder.entries.filter((entry) => isWithdrawn(bookEntry(entry) ?? entry) && entry.book !== undefined);
  const books = folder.books.map(({ id, entry }) => {
    const { title, edition } = (entry?.fields.value ?? {}) as { title?: string; edition?: string };
    const held = fromBooks.filter(({ book }) => book === id);
    return `  ${id}  ${title}, edition of ${edition && isDay(edition) ? dayWords(edition) : edition}: ${counted(held.filter(isPageKind).length, 'page')} of ${counted(held.length, 'entry', 'entries')}`;
  });
  const part = (heading: string, lines: readonly string[]): string[] =>
    lines.length > 0 ? ['', heading, ...lines.map((line) => `  ${line}`)] : [];
  console.log(
    [
      'Books, the nearest last:',
      ...books,
      ...part('Written over:', writtenOver.map(withAge)),
      ...part('Added to, or with a choice of your own:', addedTo.map(withAge)),
      ...part(
        'Taken from a book that no longer has it:',
        gone.map(
          (entry) =>
            `${nameOf(entry)}${renamedTo(nameOf(entry), folder) ? `  (it is called ${renamedTo(nameOf(entry), folder)} there now)` : ''}`,
        ),
      ),
      ...part('Past its next check, for the editors of the book:', past.map(nameOf)),
      ...part('Gaps, for you to fill or to leave:', folder.gaps),
      ...part('Withdrawn by the editors of the book:', withdrawn.map(nameOf)),
      ...part('Compared by you:', compared.map(nameOf)),
      ...part('Compared by you, but the book has changed since:', lapsedClaims(folder)),
      '',
      ...summaryLines(folder, day),
    ].join('\n'),
  );
}

function withAge(entry: Entry): string {
  const name = nameOf(entry);
  return isOlder(folder, entry) ? `${name}  (its book has changed since: npm run base -- compare ${name})` : name;
}

function take(entry: Entry): void {
  const book = bookEntry(entry);
  if (!book) stop(`${nameOf(entry)} is already your own.`, 1);
  const own = `${nameOf(entry)}${entry.path.slice(entry.path.lastIndexOf('.'))}`;
  if (existsSync(join(values.content, own))) stop(`${own} already exists. It was not changed.`, 1);
  const file = book.collection === 'figures' ? choiceOf(book) : textOf(book);
  write(own, file);
  write(takenPath(entry), book.text);
  const lines = book.collection === 'drawings' ? book.path.replace(/yaml$/, 'svg') : null;
  if (lines) write(own.replace(/yaml$/, 'svg'), readFileSync(onDisk(folder, lines), 'utf8'));
  console.log(
    [
      `Wrote ${own}, and the book's text into ${takenPath(entry)}. Keep both.`,
      book.collection === 'figures'
        ? 'It holds only your choice. The rows are still those of the book. Write rows of your own under "rows:".'
        : `Fill in your own review: "checked:", "next-check:" and "by:".${mayBeDraft(book.collection as Collection) ? ' Take "draft: true" out when readers may see it.' : ''}`,
      ...(ADDED_TO.includes(book.collection)
        ? [`To add words below the book's text instead, delete ${own} and write ${own.replace(/\.mdx$/, '.add.mdx')}.`]
        : []),
    ].join('\n'),
  );
}

/** The nearest whole file of a book, with its review fields blank: that review was the editors'. Until the club fills them, readers see the book's text. */
function textOf(book: Entry): string {
  const text = readFileSync(onDisk(folder, book.path), 'utf8').replace(/^(checked|next-check|by):.*$/gm, '$1:');
  if (!mayBeDraft(book.collection as Collection)) return text;
  return book.path.endsWith('.mdx') ? text.replace('---\n', '---\ndraft: true\n') : `draft: true\n${text}`;
}

function choiceOf({ fields }: Entry): string {
  const { follows } = fields.value as { follows?: unknown };
  return `follows: ${String(follows)}\nbecause: \n`;
}

function compare(entry: Entry): void {
  const book = bookEntry(entry);
  const then = takenText(folder, entry);
  const own =
    entry.book === undefined
      ? entry.text
      : (entry.overlays ?? [])
          .filter((overlay) => overlay.book === undefined)
          .map(({ text }) => text)
          .join('\n');
  if (!book) {
    const now = renamedTo(nameOf(entry), folder);
    return console.log(
      `No book of yours has ${nameOf(entry)}${now ? ` any more; it is called ${now} there now. Move your file to that name to write over it again.` : '. It is your own.'}`,
    );
  }
  const part = (heading: string, lines: readonly string[]): string[] => [heading, ...(lines.length > 0 ? lines : ['  nothing']), ''];
  console.log(
    [
      ...(then === null
        ? ["The text that yours came from was not kept, so the book's changes cannot be shown.", '']
        : part('The book changed since you took it:', changedLines(then, book.text))),
      ...(own === ''
        ? ['You changed nothing.']
        : entry.book === undefined
          ? part('You changed:', changedLines(then ?? book.text, own))
          : part(
              'You added:',
              own.split('\n').map((line) => `+ ${line}`),
            )),
    ].join('\n'),
  );
}

function checked(entry: Entry): void {
  const book = bookEntry(entry);
  if (entry.book === undefined || !book) stop(`${nameOf(entry)} is your own: its line "checked:" says when you compared it.`, 1);
  const held = claimFor(folder, entry);
  const day = values.on ?? todayIn(zone(), new Date());
  const by = values.by ?? 'almanac editor';
  if (held?.day === day) stop(`claims.csv already says that ${nameOf(entry)} was compared on ${dayWords(day)}.`, 1);
  const file = join(values.content, 'claims.csv');
  const before = existsSync(file) ? readFileSync(file, 'utf8').trimEnd() : 'what,day,by,hash';
  const separator = [';', '\t'].find((sign) => before.includes(`what${sign}`)) ?? ',';
  const cells = [nameOf(entry), day, by, hashOf(book)].map((cell) => (/[",;\t]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell));
  writeFileSync(file, `${before}\n${cells.join(separator)}\n`);
  console.log(`The ${by} compared ${nameOf(entry)} on ${dayWords(day)}. The line in claims.csv counts until the book's text changes.`);
}

function entryOf(named: string, asked: string | undefined): Entry {
  if (asked === undefined) stop(`base ${named} needs an entry: npm run base -- ${named} articles/swarms.`, 2);
  const found = entryNamed(
    asked,
    filesOfLayers(folder).map(({ bare }) => bare),
  );
  if (!found.ok) stop(found.reason, 1);
  const entry = folder.entries.find(({ collection, id }) => collection === found.value.collection && id === found.value.id);
  if (!entry) stop(`${found.value.collection}/${found.value.id} is not shown here: it holds elsewhere, or the club leaves it out.`, 1);
  return entry;
}

function zone(): string {
  return String((folder.club!.fields.value as { 'time-zone'?: unknown })['time-zone'] ?? 'UTC');
}

function write(path: string, text: string): void {
  const file = join(values.content, path);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
}

function stop(sentence: string, code: number): never {
  console.error(sentence);
  process.exit(code);
}
