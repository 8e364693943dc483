/*
 * `npm run new`: writes the draft of an entry, imports a table of meetings or reading, or starts a club's folder.
 *
 *     npm run new -- KIND "Title"
 *     npm run new -- meeting --from FILE.csv [--write]
 *     npm run new -- club DIR
 *     npm run new -- schemas [--content DIR]
 *
 * Exit 0 on success, 1 when nothing could be written, 2 for an unknown argument.
 */
import { existsSync, readFileSync, statSync } from 'node:fs';
import { basename, join, relative, resolve } from 'node:path';
import { formatDiagnostic } from '../source/diagnostic.ts';
import { readFolder } from '../source/folder.ts';
import type { Collection } from '../schemas/collections.ts';
import { argumentsOf } from './arguments.ts';
import { draftOf, taken, write } from './new/draft.ts';
import { TABLED, type Tabled } from './new/columns.ts';
import { clubFiles, refusal } from './new/club.ts';
import { writeEditorFiles } from './new/editor.ts';
import { bringIn, type Brought } from './new/from-table.ts';
import { collectionCalled, kindNames, singular } from './new/kinds.ts';
import { mayBeDraft } from './new/template.ts';
import { projectFolder, whereThePersonStands } from './paths.ts';

const { values, words } = argumentsOf('new');
const [kind, title] = words;
if (kind === undefined) stop(`new needs a kind: npm run new -- checklist "Package day". There are: ${kindNames.join(', ')}.`, 2);
try {
  if (kind === 'club') club(title);
  else if (kind === 'schemas') schemas();
  else entry();
} catch (error) {
  const { code, path } = error as NodeJS.ErrnoException;
  if (code === undefined || path === undefined || process.env.ALMANAC_TRACE) throw error;
  stop(`${shown(path)} cannot be read or written (${code}). Nothing was changed.`, 1);
}

function entry(): void {
  const called = collectionCalled(kind!);
  if (!called.ok) stop(called.reason, 2);
  if (values.from === undefined && values.write) stop(`--write is for --from: npm run new -- ${kind} --from table.csv --write.`, 2);
  if (values.from === undefined) draft(called.value, title);
  else bring(called.value, values.from);
}

function schemas(): void {
  if (title !== undefined || values.from !== undefined || values.write)
    stop("schemas takes only a club's folder: npm run new -- schemas --content ../our-club.", 2);
  needsClub();
  const { written, unchanged } = writeEditorFiles(values.content);
  console.log(`Wrote ${written} files for your editor into ${join(shown(values.content), '.schemas')} and .vscode; none is published.`);
  for (const path of unchanged) console.log(`${path} is your own, and was not changed. A new club's folder shows what it would contain.`);
}

function club(typed: string | undefined): void {
  if (values.from !== undefined || values.write) stop('club takes only a folder: npm run new -- club ../our-club.', 2);
  if (typed === undefined || typed.trim() === '') stop('club needs a new folder: npm run new -- club ../our-club.', 2);
  const directory = resolve(whereThePersonStands(), typed);
  const refused = refusal(directory, projectFolder);
  if (refused !== null) stop(refused, 1);
  needsClub();
  const files = clubFiles(readFolder(values.content));
  write(directory, files);
  console.log(
    `Wrote ${files.length} files into ${shown(directory)}. Begin with club.yaml; npm run check -- --content ${shown(directory)} lists every blank.`,
  );
}

function draft(collection: Collection, title: string | undefined): void {
  if (title === undefined) stop(`${kind} needs a title in quotes: npm run new -- ${singular(collection)} "Swarm season".`, 2);
  needsClub();
  const drafted = draftOf(collection, title);
  if (!drafted.ok) stop(drafted.reason, 2);
  const other = drafted.value.map(({ path }) => taken(values.content, path)).find((path) => path !== undefined);
  if (other !== undefined) stop(`${other} already exists, and was not changed. Write another title.`, 1);
  write(values.content, drafted.value);
  console.log(`Wrote ${drafted.value.map(({ path }) => join(shown(values.content), path)).join(' and ')}.`);
  console.log(next(mayBeDraft(collection)));
  tellLeftOut(collection);
}

/** club.yaml of a new club lists the folders that have no entries yet. */
function tellLeftOut(collection: Collection): void {
  const fields = readFolder(values.content).club?.fields.value as { 'leaves-out'?: unknown } | undefined;
  const without = fields?.['leaves-out'];
  if (Array.isArray(without) && without.includes(collection))
    console.log(`Take ${collection} out of the list "leaves-out:" in club.yaml as well.`);
}

function next(isDraft: boolean): string {
  const content = values.content === join(projectFolder, 'content', 'demo-club') ? '' : ` -- --content ${shown(values.content)}`;
  return `Fill the blanks, then run npm run check${content}.${isDraft ? ' Take out "draft: true" when members may see it.' : ''}`;
}

function needsClub(): void {
  if (!existsSync(join(values.content, 'club.yaml')))
    stop(
      `There is no club.yaml in ${shown(values.content)}. Write the club's folder after --content, or begin one: npm run new -- club DIR.`,
      1,
    );
}

function bring(collection: Collection, file: string): void {
  if (!(TABLED as readonly string[]).includes(collection)) stop(`A table can only hold meetings or reading, not ${collection}.`, 2);
  if (title !== undefined) stop(`With --from the titles are in the table; leave out "${title}".`, 2);
  if (!statSync(file, { throwIfNoEntry: false })?.isFile())
    stop(`There is no file ${shown(file)}. Write the table's path after --from.`, 1);
  needsClub();
  const { files, faults } = bringIn(collection as Tabled, basename(file), readFileSync(file), readFolder(values.content));
  if (faults.length > 0) {
    console.log(
      [...faults.map(formatDiagnostic), `${faults.length} ${faults.length === 1 ? 'fault' : 'faults'}. Nothing was written.`].join('\n'),
    );
    process.exitCode = 1;
    return;
  }
  if (values.write) write(values.content, files);
  console.log([...files.map(lineFor), '', ...closing(files)].join('\n'));
  tellLeftOut(collection);
}

function lineFor({ path, title: words, day }: Brought): string {
  return `${path}  ${day === undefined ? '' : `${day}  `}${words}`;
}

function closing(files: readonly Brought[]): string[] {
  const lacking = [...new Set(files.flatMap((file) => file.lacking))];
  const many = `${files.length} ${files.length === 1 ? 'file' : 'files'}`;
  const blank = lacking.length === 0 ? [] : [`Blank in some or all of them: ${lacking.join(', ')}.`];
  return values.write
    ? [`${many} written. ${next(true)}`, ...blank]
    : [`${many} would be written. Nothing is written yet: add --write.`, ...blank];
}

/** A folder as the person would type it from her own directory. */
function shown(folder: string): string {
  const near = relative(whereThePersonStands(), folder);
  return near === '' ? '.' : near.length < folder.length ? near : folder;
}

function stop(sentence: string, code: number): never {
  console.error(sentence);
  process.exit(code);
}
