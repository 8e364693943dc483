/*
 * `npm run new`: writes the draft of an entry, imports a table of meetings or reading, or makes a club's folder of its answers.
 *
 *     npm run new -- KIND "Title"
 *     npm run new -- meeting --from FILE.csv [--write]
 *     npm run new -- club DIR [--land NZ-WKO] [--answers FILE]
 *     npm run new -- schemas [--content DIR]
 *
 * Exit 0 on success, 1 when nothing could be written, 2 for an unknown argument.
 */
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join, relative, resolve } from 'node:path';
import { todayIn } from '../../shared/days/today.ts';
import { check } from '../checks/check.ts';
import { formatDiagnostic, type Diagnostic } from '../source/diagnostic.ts';
import { readFolder } from '../source/folder.ts';
import type { Collection } from '../schemas/collections.ts';
import { argumentsOf } from './arguments.ts';
import { answersFrom, ask } from './new/answers.ts';
import { draftOf, taken, write, type File } from './new/draft.ts';
import { TABLED, type Tabled } from './new/columns.ts';
import { basisOf, clubFiles, refusal } from './new/club.ts';
import { writeEditorFiles } from './new/editor.ts';
import { bringIn, type Brought } from './new/from-table.ts';
import { collectionCalled, kindNames, singular } from './new/kinds.ts';
import { booksOf, type Half } from './new/land.ts';
import { QUESTIONS, type Context, type Given } from './new/questions.ts';
import { mayBeDraft } from './new/template.ts';
import { projectFolder, whereThePersonStands } from './paths.ts';

const { values, words } = argumentsOf('new');
const [kind, title] = words;
if (kind === undefined) stop(`new needs a kind: npm run new -- checklist "Package day". There are: ${kindNames.join(', ')}.`, 2);
try {
  if (kind !== 'club' && (values.land ?? values.answers) !== undefined)
    stop('--land and --answers are for a club: npm run new -- club ../our-club --answers answers.yaml.', 2);
  if (kind === 'club') await club(title);
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
  for (const path of unchanged) console.log(`${path} is your own, and was not changed.`);
}

async function club(typed: string | undefined): Promise<void> {
  if (values.from !== undefined || values.write) stop('club takes a folder, --land and --answers: npm run new -- club ../our-club.', 2);
  if (typed === undefined || typed.trim() === '') stop('club needs a new folder: npm run new -- club ../our-club.', 2);
  const directory = resolve(whereThePersonStands(), typed);
  const refused = refusal(directory, projectFolder);
  if (refused !== null) stop(refused, 1);
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const context = { today: values.on ?? todayIn(zone, new Date()), zone };
  const answers = values.answers === undefined ? await asked(directory, context) : answered(values.answers, context);
  if (answers === null) return;
  const files = clubFiles(answers, context.today);
  const faults = faultsIn(files);
  if (faults.length > 0) return refuse(faults);
  write(directory, files);
  console.log(welcome(shown(directory), files, answers));
}

/** The land of `--land`, once it is right. */
function landGiven(context: Context): Given {
  if (values.land === undefined) return {};
  const read = QUESTIONS.find(({ key }) => key === 'land')!.read(values.land, {}, context);
  if (!read.ok) stop(`--land: found ${read.reason.found}; write ${read.reason.write}.`, 2);
  return { land: read.value };
}

async function asked(directory: string, context: Context): Promise<Given | null> {
  const given = landGiven(context);
  console.log(`A new club in ${shown(directory)}. Enter takes the answer in brackets. Nothing is written before the last answer.`);
  const answers = await ask(process.stdin, process.stdout, given, context);
  if (answers === null) {
    console.error('\nThe answers ended before the last question. Nothing was written.');
    process.exitCode = 1;
  }
  return answers;
}

function answered(file: string, context: Context): Given | null {
  if (!statSync(file, { throwIfNoEntry: false })?.isFile()) stop(`There is no file ${shown(file)}. Write its path after --answers.`, 1);
  const read = answersFrom(basename(file), readFileSync(file), landGiven(context), context);
  if (read.ok) return read.value;
  refuse(read.reason);
  return null;
}

function refuse(faults: readonly Diagnostic[]): void {
  console.log(
    [...faults.map(formatDiagnostic), `${faults.length} ${faults.length === 1 ? 'fault' : 'faults'}. Nothing was written.`].join('\n'),
  );
  process.exitCode = 1;
}

/** What check says of the folder, before it is where it belongs. */
function faultsIn(files: readonly File[]): Diagnostic[] {
  const trial = mkdtempSync(join(tmpdir(), 'new-club-'));
  try {
    write(trial, files);
    return check(trial);
  } finally {
    rmSync(trial, { recursive: true, force: true });
  }
}

function welcome(directory: string, files: readonly File[], answers: Given): string {
  const books = booksOf(answers.land!, answers.hemisphere as Half).map(({ id }) => id);
  return [
    `Wrote ${files.map(({ path }) => join(directory, path)).join(', ')}. Everything else comes from the books ${books.join(', ')}.`,
    `Dates of the year: ${basisOf(answers)}`,
    `Look at it: npm start -- --content ${directory}`,
    `Build it:   npm run build -- --content ${directory} --out ${directory}-site`,
  ].join('\n');
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

function next(isDraft: boolean, hasBlanks = true): string {
  const content = values.content === join(projectFolder, 'content', 'demo-club') ? '' : ` -- --content ${shown(values.content)}`;
  return `${hasBlanks ? 'Fill the blanks, then run' : 'Run'} npm run check${content}.${isDraft ? ' Take out "draft: true" when members may see it.' : ''}`;
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
  if (faults.length > 0) return refuse(faults);
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
    ? [
        `${many} written. ${next(
          files.some(({ text }) => /^draft: true$/m.test(text)),
          lacking.length > 0,
        )}`,
        ...blank,
      ]
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
