/*
 * Checks a club's own files in files/: PDFs by their bytes, each description beside its PDF, and the links to them. The names of the
 * files are checked with those of all others, in names.ts.
 */
import { MOST_MB, refusalOfFile } from '../source/club-file.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import { onDisk } from '../source/folder.ts';
import { walk } from '../source/prose.ts';
import type { Correction } from '../../shared/result.ts';
import type { ValidEntries } from './fields.ts';
import { atNode, isPage } from './place.ts';
import { fileMeant } from './suggestions.ts';

const FOLDER = 'files/';

export function clubFileFaults({ folder, club }: ValidEntries): Diagnostic[] {
  const names = pdfsIn(folder.files);
  const most = club?.data['largest-file-mb'] ?? MOST_MB;
  return [
    ...names.flatMap((name) => atFile(FOLDER + name, refusalOfFile(onDisk(folder, FOLDER + name), most))),
    ...folder.files
      .filter((path) => /^files\/[^/]+\.yaml$/.test(path) && !names.includes(pdfBeside(path)))
      .flatMap((path) =>
        atFile(path, {
          found: `no "${pdfBeside(path)}" beside it`,
          write: `the PDF into files/ under that name${nearWords(pdfBeside(path), names)}, or take this file away`,
        }),
      ),
    ...folder.entries.filter(isPage).flatMap((page) =>
      [...walk(page.tree)].flatMap((node) => {
        const wrong = node.type === 'link' ? fileLinkWrong(node.url, names) : null;
        return wrong ? [atNode(page, node, { rule: 'link', field: 'a link', ...wrong })] : [];
      }),
    ),
  ];
}

export const pdfsIn = (files: readonly string[]): string[] =>
  files.flatMap((path) => (/^files\/[^/]+\.pdf$/i.test(path) ? [path.slice(FOLDER.length)] : []));

const pdfBeside = (path: string): string => path.slice(FOLDER.length).replace(/yaml$/, 'pdf');

const atFile = (path: string, wrong: Correction | null): Diagnostic[] =>
  wrong ? [{ path, line: 1, column: 1, rule: 'club-file', field: 'the file', ...wrong }] : [];

/** True for the links that this file checks: into files/, and to a PDF that is named without an address. */
export const leadsToFile = (url: string): boolean =>
  /^\/files(?:\/|$)/i.test(url) || (!/^(?:[a-z][a-z0-9+.-]*:|[/\\#])/i.test(url) && /\.pdf(?:#.*)?$/i.test(url) && !url.includes('\\'));

/** `names`: the PDFs of the club. Null for a link that leads to one of them, and for all other links. */
export function fileLinkWrong(url: string, names: readonly string[]): Correction | null {
  if (!leadsToFile(url)) return null;
  const [path = '', fragment] = decoded(url).split('#');
  const name = path.replace(/\/+$/, '').replace(/^.*\//, '');
  const right = `/files/${name}`;
  const tail = fragment === undefined ? '' : `#${fragment}`;
  if (names.includes(name)) return path === right ? null : { found: `"${url}"`, write: `"${right}${tail}"` };
  if (/^\/files\/*$/i.test(path))
    return { found: `"${url}", which is no page`, write: '"/club/#files", where all files are listed, or the address of one of them' };
  const same = names.find((each) => each.toLowerCase() === name.toLowerCase() || each === `${name}.pdf`);
  const near = same ?? fileMeant(name, names);
  if (near !== undefined) return { found: `"${url}", while files/ has "${near}"`, write: `"/files/${near}${tail}"` };
  return {
    found: `"${url}", which is not in files/`,
    write:
      names.length === 0
        ? `"/files/${name.toLowerCase().endsWith('.pdf') ? name : 'name.pdf'}", and put the PDF into the folder files/ of the club under that name`
        : `the address of one that is there: ${names
            .slice(0, 5)
            .map((each) => `/files/${each}`)
            .join(', ')}${names.length > 5 ? ' ...' : ''}`,
  };
}

const nearWords = (name: string, names: readonly string[]): string => {
  const near = fileMeant(name, names);
  return near === undefined ? '' : ` (there is "${near}")`;
};

function decoded(url: string): string {
  try {
    return decodeURIComponent(url);
  } catch {
    return url;
  }
}

/** The endings of files that are refused in files/, and what to do with each. */
const REFUSED: readonly [ending: RegExp, found: string, write: string][] = [
  [
    /^\.(?:exe|msi|bat|cmd|com|scr|ps1|vbs|jar|apk|appimage|app|dmg|pkg|deb|rpm|sh|js|mjs|py|php|lnk)$/,
    'a program',
    'nothing, and take the file away: the almanac publishes no programs',
  ],
  [/^\.(?:html?|xhtml|mht|mhtml|svgz?|xml)$/, 'which can hold a program', 'it printed as PDF, or its words in a page'],
  [
    /^\.(?:docx?|docm|odt|rtf|pages|xlsx?|xlsm|ods|numbers|csv|pptx?|pptm|odp|txt|md|mdx)$/,
    'which many phones cannot open',
    'it saved as PDF, or its words in a page',
  ],
  [/^\.(?:bak|old|orig|tmp|swp|save|backup)$/, 'which some program left behind', 'nothing, and take the file away'],
  [/^\.(?:jpe?g|png|webp|gif|tiff?|heic|avif|bmp)$/, 'a picture', 'it beside the page that shows it, or printed as PDF'],
];

/** Why a name in files/ is refused for its ending. Null for a PDF and for what describes one. */
export function endingRefused(name: string): Correction | null {
  const dot = name.lastIndexOf('.');
  const ending = dot < 0 ? '' : name.slice(dot);
  if (ending === '.pdf' || ending === '.yaml') return null;
  if (ending === '') return { found: `"${name}", a name without an ending`, write: `"${name}.pdf" where it is a PDF` };
  if (/^\.(?:pdf|yaml)$/i.test(ending)) return { found: `the ending "${ending}"`, write: `"${ending.toLowerCase()}"` };
  const [, found, write] = REFUSED.find(([pattern]) => pattern.test(ending.toLowerCase())) ?? [
    null,
    'which is not published',
    'it saved as PDF',
  ];
  return { found: `the ending "${ending}", ${found}`, write };
}
