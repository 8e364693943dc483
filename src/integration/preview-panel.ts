/*
 * Panel of the preview, above the main text of every page: faults of the page that is looked at, then those of other files, hints, drafts
 * with their blanks, and the files that its texts are from. It is HTML from the preview's server, so no built page contains any of it.
 */
import type { ElementContent } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { h } from 'hastscript';
import { isBlank } from '../checks/drafts.ts';
import { isDraft } from '../source/draft.ts';
import { formatDiagnostic, type Diagnostic } from '../source/diagnostic.ts';
import type { Entry, Folder } from '../source/folder.ts';
import { bookOf, filesOfPage, placeOfEntry, type PageFiles } from '../source/page-files.ts';

export type Findings = { folder: Folder; faults: readonly Diagnostic[]; hints: readonly Diagnostic[]; drafts: readonly Diagnostic[] };

/** `place`: the address of the page below `base`. */
export function previewPanel({ folder, faults, hints, drafts }: Findings, place: string, base: string): string {
  const files = filesOfPage(folder, place);
  // The names and numbers of the club are on every page.
  const isHere = ({ path }: Diagnostic): boolean => path === 'club.yaml' || files.own.includes(path) || files.shown.includes(path);
  const [here, elsewhere] = [faults.filter(isHere), faults.filter((fault) => !isHere(fault))];
  const all = draftsOf(folder);
  return toHtml(
    h('section', { className: here.length > 0 ? ['preview', 'has-faults'] : ['preview'], ariaLabelledBy: ['preview-title'] }, [
      h('style', STYLE),
      h('h2', { id: 'preview-title' }, 'Preview'),
      h('p', sentence(here.length, elsewhere.length)),
      ...(here.length > 0 ? [list(here)] : []),
      fold('faults', `${counted(elsewhere.length, 'fault')} in other files`, elsewhere.length, [list(elsewhere)]),
      fold('hints', counted(hints.length, 'hint'), hints.length, [
        h('p', 'These are optional. Those of this page come first.'),
        list([...hints.filter(isHere), ...hints.filter((hint) => !isHere(hint))]),
      ]),
      fold('drafts', `${counted(all.length, 'draft')}, ${counted(drafts.filter(isBlank).length, 'blank')}`, all.length, [
        h(
          'ul',
          all.map((draft) => draftItem(draft, drafts, base)),
        ),
      ]),
      fold('texts', 'Whose text this is, and where to edit it', 1, textsOf(folder, files)),
    ]),
  );
}

function sentence(here: number, elsewhere: number): string {
  if (here > 0) return `This page has ${counted(here, 'fault')} to correct before publishing. Until then it may not be shown:`;
  return elsewhere > 0 ? 'This page has no fault. Nothing can be published before the others are corrected.' : 'No faults.';
}

/** Empty where there is nothing to show. */
const fold = (name: string, summary: string, count: number, content: ElementContent[]): ElementContent =>
  count === 0 ? { type: 'text', value: '' } : h('details', { dataPreview: name }, [h('summary', summary), ...content]);

const list = (found: readonly Diagnostic[], placeOf: PlaceOf = placeIn): ElementContent =>
  h(
    'ul',
    found.map((each) => h('li', written(each, placeOf))),
  );

type PlaceOf = (found: Diagnostic) => string;
const placeIn: PlaceOf = ({ path, line, column }) => `${path}:${line}:${column}`;

/** The place, what is wrong, and the corrected line where it is known. */
function written(found: Diagnostic, placeOf: PlaceOf): ElementContent[] {
  const [head = '', corrected] = formatDiagnostic(found).split('\n    ');
  const at = placeIn(found);
  const words: ElementContent[] = head.startsWith(at)
    ? [h('code', placeOf(found)), { type: 'text', value: head.slice(at.length) }]
    : [{ type: 'text', value: head }];
  return corrected === undefined ? words : [...words, h('pre', corrected)];
}

type Draft = { path: string; title: string; place: string | null };

function draftsOf({ entries, overlays, overNothing, unreadDrafts }: Folder): Draft[] {
  const parsed = [...entries.filter(({ book }) => book === undefined), ...overlays, ...overNothing].filter(isDraft);
  const drafts = [
    ...parsed.map((entry) => ({ path: entry.path, title: titleOf(entry), place: placeOfEntry(entry) })),
    ...unreadDrafts.map((path) => ({ path, title: path, place: null })),
  ];
  return drafts.filter(({ path }, at) => drafts.findIndex((other) => other.path === path) === at);
}

function titleOf({ path, fields }: Entry): string {
  const { title, word, heading } = (fields.value ?? {}) as Record<string, unknown>;
  return [title, word, heading].find((each) => typeof each === 'string' && each !== '')?.toString() ?? path;
}

function draftItem({ path, title, place }: Draft, found: readonly Diagnostic[], base: string): ElementContent {
  const own = found.filter((each) => each.path === path);
  return h('li', [
    place === null ? h('b', title) : h('a', { href: `${base}${place}` }, title),
    ...(title === path ? [] : [' ', h('code', path)]),
    own.length > 0
      ? list(own, ({ line }) => `line ${line}`)
      : h('p', 'Nothing is missing. Take the line "draft: true" away to publish it.'),
  ]);
}

function textsOf(folder: Folder, { own, shown, lists }: PageFiles): ElementContent[] {
  const ofClub = shown.filter((each) => !bookOf(folder, each));
  const books = folder.books.map((each) => ({ title: titleOfBook(each), paths: shown.filter((held) => bookOf(folder, held) === each) }));
  return [
    ...own.map((each) => h('p', [h('b', `${own.length > 1 ? 'A part of this page' : 'This page'}: `), ...fileOf(folder, each)])),
    ...ofBookHelp(folder, own),
    own.length > 0
      ? h('p', h('label', [h('input', { type: 'checkbox', dataPreviewMarks: '' }), ' Show on the page whose each text is, with its file']))
      : h('p', lists ? `This page lists the files of ${lists}/.` : 'This page has no file of its own.'),
    ...(ofClub.length > 0 ? [h('p', h('b', lists ? 'Of your club:' : 'It also shows, of your club:')), paths(ofClub)] : []),
    ...books.flatMap(({ title, paths: held }) => (held.length > 0 ? ofBook(title, held, lists) : [])),
    h('p', ['On every page: ', h('code', 'club.yaml'), ', with the names and numbers of your club.']),
  ];
}

/** How a club changes a page of a book, and adds to it. */
function ofBookHelp(folder: Folder, own: readonly string[]): ElementContent[] {
  const path = own.find((each) => bookOf(folder, each));
  if (path === undefined) return [];
  const name = path.replace(/^books\/[^/]+\//, '').replace(/(?:\.add)?\.\w+$/, '');
  const mayAdd = path.endsWith('.mdx') && !own.includes(`${name}.add.mdx`);
  return [
    h('p', [
      'A release brings new texts of a book, so do not edit them. To change the page, type ',
      h('code', `npm run base -- take ${name}`),
      ...(mayAdd ? ['. To add to it, write ', h('code', `${name}.add.mdx`)] : []),
      '.',
    ]),
  ];
}

const fileOf = (folder: Folder, path: string): ElementContent[] => {
  const book = bookOf(folder, path);
  return [h('code', path), { type: 'text', value: book ? `, from: ${titleOfBook(book)}.` : ', of your club.' }];
};

/** A list may have hundreds of entries from a book, whose files are named as they are. */
const ofBook = (title: string, held: readonly string[], lists: string | undefined): ElementContent[] =>
  lists ? [h('p', [h('b', `${title}: `), `${counted(held.length, 'file')}.`])] : [h('p', h('b', `${title}:`)), paths(held)];

const paths = (all: readonly string[]): ElementContent =>
  h(
    'ul',
    all.map((path) => h('li', h('code', path))),
  );

const titleOfBook = ({ id, entry }: Folder['books'][number]): string =>
  String((entry?.fields.value as { title?: unknown } | undefined)?.title ?? id);

const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

/** Print shows the page as it will be published. */
const STYLE = `
.preview { margin: 1rem 0; padding: 0.6rem 0.9rem; border: 1px solid var(--edge); border-left-width: 5px; font: var(--small)/1.5 var(--sans); }
.preview.has-faults { border-color: var(--act); }
.preview h2 { margin: 0; padding: 0; border: 0; font: 600 1.05rem/1.4 var(--sans); }
.preview h2::before { content: none; }
.preview p { margin: 0.2rem 0; }
.preview ul { margin: 0.2rem 0 0.6rem; padding-left: 1.2rem; }
.preview li { margin: 0.3rem 0; overflow-wrap: anywhere; }
.preview code { font-weight: 600; overflow-wrap: anywhere; }
.preview pre { margin: 0.2rem 0; overflow-x: auto; white-space: pre-wrap; }
.preview label { display: inline-flex; gap: 0.6rem; align-items: center; min-height: var(--tap); }
.preview [type='checkbox'] { width: 24px; height: 24px; }
.preview-from { margin: 0.8rem 0 0; color: var(--soft); font: var(--tiny)/1.4 var(--sans); overflow-wrap: anywhere; }
summary [data-preview-whose] { box-shadow: none !important; }
[data-preview-whose] { box-shadow: -0.4rem 0 var(--paper), -0.6rem 0 var(--edge); }
[data-preview-whose='club'] { box-shadow: -0.4rem 0 var(--paper), -0.6rem 0 var(--watch); }
@media print { .preview, .preview-from { display: none; } [data-preview-whose] { box-shadow: none; } }
`;
