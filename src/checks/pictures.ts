/*
 * Checks pictures: they lie beside their page under the exact name, have a description, and are on lines of their own. The contents of a
 * file are checked when it is prepared. This check reads only the first bytes.
 */
import type { Image, Nodes } from 'mdast';
import { quoted, type Diagnostic } from '../source/diagnostic.ts';
import { onDisk, type Folder } from '../source/folder.ts';
import { isPictureName, isUnreadName, refusalOf } from '../source/picture-file.ts';
import { composed, filesBeside, namesMeant, picturesShown, type PictureShown } from '../source/pictures.ts';
import type { ValidEntries } from './fields.ts';
import { atNode, isPage, sourceOf, type Page, type Message } from './place.ts';
import { fileMeant } from './suggestions.ts';

type Wrong = Pick<Message, 'found' | 'write'>;

export function pictureFaults({ folder }: ValidEntries): Diagnostic[] {
  const shown = picturesShown(folder).flatMap((each) =>
    [describedWrong(each), namedWrong(each, folder.files)].flatMap((wrong) => (wrong ? [fault(each.page as Page, each.image, wrong)] : [])),
  );
  const placed = folder.entries.filter(isPage).flatMap((page) => placeFaults(page, page.tree, null));
  return [...shown, ...placed, ...picturesOf(folder.files).flatMap((path) => kindFaults(folder, path))];
}

/** An unused picture is no fault, because a later page may need it. */
export function pictureHints({ folder }: ValidEntries): Diagnostic[] {
  const used = new Set(picturesShown(folder).map(({ path }) => path));
  return picturesOf(folder.files)
    .filter((path) => !used.has(path) && path.split('/').length === 2 && !refusalOf(onDisk(folder, path)))
    .map((path) =>
      atFile(path, {
        found: 'a picture that no page shows',
        write: `![what it shows](${path.slice(path.indexOf('/') + 1)}) in a page of ${path.slice(0, path.indexOf('/') + 1)}, or take it away`,
      }),
    );
}

/** The SVG files of drawings, and pictures among them, have their own rule. */
const picturesOf = (files: readonly string[]): string[] =>
  files.filter((path) => (isPictureName(path) || isUnreadName(path)) && !path.startsWith('drawings/') && !path.startsWith('files/'));

const fault = (page: Page, node: Nodes, wrong: Wrong): Diagnostic => atNode(page, node, { rule: 'picture', field: 'a picture', ...wrong });
const atFile = (path: string, wrong: Wrong): Diagnostic => ({ path, line: 1, column: 1, rule: 'picture', field: 'the file', ...wrong });

/** What many programs write in place of a description. */
const SAYS_NOTHING = /^(?:an? |the )?(?:image|picture|photo(?:graph)?|img|pic|alt(?: text)?|screenshot|untitled)?[\s\d.,:_-]*$/i;

function describedWrong({ page, image }: PictureShown): Wrong | null {
  const alt = (image.alt ?? '').trim();
  const write = `what it shows, for those who do not see it: ![a frame with capped brood](${image.url})`;
  if (/<[A-Z]/.test(sourceOf(page, image))) return { found: 'a tag in the description of a picture', write: 'plain words' };
  if (alt === '') return { found: 'a picture without a description', write };
  if (SAYS_NOTHING.test(alt) || /^\S+\.\w{3,4}$/.test(alt) || image.url.endsWith(alt))
    return { found: `${quoted(alt)} as the description of a picture`, write };
  return null;
}

function namedWrong({ page, image: { url }, path }: PictureShown, files: readonly string[]): Wrong | null {
  if (path !== null) return null;
  const bare = 'the bare name of a file beside this page, such as frame.jpg';
  if (/^(?:[a-z]:[\\/]|file:|\\\\)/i.test(url)) return { found: `"${url}", a place on one computer`, write: bare };
  if (/^[a-z][a-z0-9+.-]*:|^\/\//i.test(url)) return { found: `"${url}" on another site`, write: 'the name of a file beside this page' };
  const names = namesMeant(url);
  if (names[0] === '' || /[\\/]/.test(names[0]!)) return { found: `"${url}"`, write: bare };
  const beside = filesBeside(page.collection, files);
  // A file that is no picture is reported at its own path.
  if (beside.some((each) => names.includes(composed(each)))) return null;
  const cased = beside.find((each) => names.some((name) => composed(each).toLowerCase() === name.toLowerCase()));
  if (cased) return { found: `"${names.at(-1)}", while the file is called "${cased}"`, write: `"${cased}"` };
  const near = fileMeant(names.at(-1)!, beside);
  return {
    found: `"${names.at(-1)}", which is not beside this page`,
    write: near ? `"${near}"` : `the name of a picture in ${page.collection}/, or copy this one there`,
  };
}

/** `within`: the element that would cut off a picture, or that a picture would split. */
function placeFaults(page: Page, node: Nodes, within: string | null): Diagnostic[] {
  if (node.type === 'image')
    return within
      ? [
          fault(page, node, {
            found: `a picture inside ${within}`,
            write:
              within === STEP
                ? 'it below the step, after an empty line and indented by two spaces'
                : 'it on a line of its own, with an empty line before and after',
          }),
        ]
      : [];
  if (!('children' in node)) return [];
  const inside = WITHIN[node.type] ?? within;
  return (node.children as Nodes[]).flatMap((child) =>
    placeFaults(
      page,
      child,
      inside ?? (child.type === 'image' && !hasOwnLine(page, child) ? 'a sentence' : isStepWords(node, child) ? STEP : null),
    ),
  );
}

const STEP = 'the words of a step';
const WITHIN: Readonly<Record<string, string>> = {
  link: 'a link',
  heading: 'a heading',
  table: 'a table',
  emphasis: 'other words',
  strong: 'other words',
  delete: 'other words',
};

/** The line of a step is its label. */
const isStepWords = (parent: Nodes, child: Nodes): boolean =>
  parent.type === 'listItem' && typeof parent.checked === 'boolean' && parent.children[0] === child;

/** True where the line, apart from a list's sign, contains only pictures. */
function hasOwnLine(page: Page, image: Image): boolean {
  const [start, end] = [image.position?.start.offset ?? 0, image.position?.end.offset ?? 0];
  const before = page.body.slice(page.body.lastIndexOf('\n', start - 1) + 1, start);
  const after = page.body.slice(end).split('\n', 1)[0]!;
  return isBare(before.replace(/^[\s>]*(?:[-*+]|\d+[.)])?\s*/, '')) && isBare(after);
}

const isBare = (text: string): boolean =>
  text
    .replace(/!\[[^\]]*\]\([^\n]*?\)/g, '')
    .replace(/\\$/, '')
    .trim() === '';

/** No browser draws a phone's HEIC picture that was renamed to `.jpg`. */
function kindFaults(folder: Folder, path: string): Diagnostic[] {
  const refusal = refusalOf(onDisk(folder, path));
  return refusal ? [atFile(path, refusal)] : [];
}
