/* Checks names of files and folders: a host can serve them, a collection expects them, and none occurs twice. */
import { tongues } from '../../shared/country/language.ts';
import { collections } from '../schemas/collections.ts';
import { textFieldsOf } from '../schemas/translations.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import type { Folder } from '../source/folder.ts';
import { endingRefused } from './files.ts';
import { isPictureName, isUnreadName } from '../source/picture-file.ts';
import { ADDED_TO } from '../source/overlay.ts';
import { translationIn } from '../source/translations.ts';
import { nearOrAll } from '../../shared/words/near-name.ts';

const PLAIN = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;
/** Files outside every folder. */
const ALONE = new Set(['club.yaml', 'book.yaml', 'claims.csv', 'stations.csv', 'README.md']);
/** What a club has for itself alone: no book can give it. */
const NOT_IN_BOOKS = new Set(['meetings', 'notices', 'counts', 'files']);
const RESERVED = /^(?:index|con|prn|aux|nul|com\d|lpt\d)$/;

export function nameFaults(folder: Folder): Diagnostic[] {
  if (folder.files.length === 0 && folder.faults.length > 0) return [];
  return [
    ...clubFaults(folder),
    ...missingFolders(folder),
    ...folder.files.flatMap((path) => fileFaults(path, folder.book !== null)),
    ...twins(folder.files),
  ];
}

const fault = (path: string, rule: string, field: string, found: string, write: string): Diagnostic => ({
  path,
  line: 1,
  column: 1,
  rule,
  field,
  found,
  write,
});

function clubFaults(folder: Folder): Diagnostic[] {
  if (folder.files.includes('club.yaml') || folder.files.includes('book.yaml')) return [];
  const what = folder.files.length === 0 ? 'an empty folder' : 'no club.yaml';
  return [
    fault('club.yaml', 'missing-file', 'the content folder', what, "a file club.yaml with the club's name, place, districts and contacts"),
  ];
}

/** A missing folder was lost, unless the club states that it has none. */
function missingFolders(folder: Folder): Diagnostic[] {
  if (!folder.club) return [];
  const leaves = (folder.club.fields.value as { 'leaves-out'?: unknown } | undefined)?.['leaves-out'];
  const without: unknown[] = Array.isArray(leaves) ? leaves : [];
  const own = new Set(folder.files.filter((path) => /^[^/]+\/[^/]+\.(?:mdx|yaml|csv)$/.test(path)).map((path) => path.split('/')[0]!));
  const missing = Object.entries(collections as Record<string, { mayLack?: true }>)
    .flatMap(([name, { mayLack }]) => (mayLack ? [] : [name]))
    // What a club has no folder of, its books may hold for it.
    .filter((name) => folder.books.length === 0 && !own.has(name) && !without.includes(name));
  // Over books a club may leave out all of a kind that they have, and write its own.
  const present = folder.books.length > 0 ? [] : without.flatMap((name, index) => (own.has(String(name)) ? [{ name, index }] : []));
  return [
    ...missing.map((name) =>
      fault(
        `${name}/`,
        'missing-folder',
        'the folder',
        'no file in it',
        `pages in ${name}/, or "- ${name}" in the list "leaves-out:" of club.yaml`,
      ),
    ),
    ...present.map(({ name, index }) => ({
      ...fault(
        'club.yaml',
        'missing-folder',
        `leaves-out ${index + 1}`,
        `"${String(name)}", a folder that has files`,
        'only folders that the club does without',
      ),
      ...folder.club!.fields.placeOf(['leaves-out', index]),
    })),
  ];
}

/** Checks the folder and the name of one file. */
export function fileFaults(path: string, isBook = false): Diagnostic[] {
  const parts = path.split('/');
  if (ALONE.has(path) || (isBook && translationIn(path)?.collection === 'book')) return [];
  if (parts.length === 1)
    return [
      fault(
        path,
        'file-place',
        'the file',
        'a file outside every folder',
        `it in one of the folders ${Object.keys(collections).join(', ')}`,
      ),
    ];
  const kind = (collections as Record<string, { ending: string }>)[parts[0]!];
  if (NOT_IN_BOOKS.has(parts[0]!) && isBook)
    return [fault(path, 'file-place', 'the file', `${parts[0]} in a book`, "it in a club's own folder")];
  if (!kind) {
    return [
      fault(
        path,
        'folder-name',
        'the folder',
        `"${parts[0]}", a folder the almanac does not know`,
        nearOrAll(parts[0]!, Object.keys(collections)),
      ),
    ];
  }
  const isClubFile = parts[0] === 'files';
  const refused = isClubFile && parts.length === 2 ? endingRefused(parts[1]!) : null;
  if (refused) return [fault(path, 'club-file', "the file's name", refused.found, refused.write)];
  if (!isClubFile && (isPictureName(path) || isUnreadName(path))) return pictureName(path, parts);
  if (parts.length > 2)
    return [
      fault(
        path,
        'file-place',
        'the file',
        `${isClubFile ? 'a file' : 'a page'} in a folder below the collection`,
        `it straight in ${parts[0]}/`,
      ),
    ];
  const dot = parts[1]!.lastIndexOf('.');
  const ending = parts[1]!.slice(dot);
  const other = textFieldsOf(parts[0]!) ? /^[a-z0-9-]+\.([a-z]{2})\.(?:mdx|yaml)$/.exec(parts[1]!)?.[1] : undefined;
  if (other !== undefined && translationIn(path) === null)
    return [
      fault(
        path,
        'file-name',
        "the file's name",
        `"${other}", a language that the program does not speak`,
        `one of: ${tongues.join(', ')}`,
      ),
    ];
  const name = parts[1]!
    .slice(0, dot)
    .replace(other === undefined ? /$^/ : /\.[a-z]{2}$/, '')
    .replace(ADDED_TO.includes(parts[0]!) ? /\.add$/ : /$^/, '');
  const others = isClubFile ? undefined : LEFT_BEHIND.find(({ pattern }) => pattern.test(parts[1]!));
  if (others) return [fault(path, 'file-ending', "the file's name", `"${parts[1]}", ${others.found}`, others.write)];
  if (ending !== kind.ending && !isClubFile)
    return [fault(path, 'file-ending', "the file's name", `the ending "${ending}"`, `"${kind.ending}", as all files in ${parts[0]}/ have`)];
  if (RESERVED.test(name))
    return [
      fault(path, 'file-name', "the file's name", `"${name}", which means something else to hosts and some computers`, 'a longer name'),
    ];
  if (name.length > 60) return [fault(path, 'file-name', "the file's name", `a name of ${name.length} letters`, 'at most 60')];
  if (!PLAIN.test(name))
    return [
      fault(
        path,
        'file-name',
        "the file's name",
        `"${name}", which hosts and addresses cannot carry safely`,
        `"${plainName(name)}${ending}"${COPY.test(name) ? ' for a page of its own; a mere copy is taken away' : ''}`,
      ),
    ];
  return [];
}

/** What programs call a copy: "lifting copy", "lifting (1)", "Copy of lifting". */
const COPY = /(?:[ _-]copy(?:[ _-]?\d+)?| ?\(\d+\))$|^copy of /i;

/** Files of other programs, which are no pages under another ending. */
const LEFT_BEHIND: readonly { pattern: RegExp; found: string; write: string }[] = [
  {
    pattern: /\.(?:bak|old|orig|rej|tmp|swp|save|backup)$|~$/i,
    found: 'which some program left behind',
    write: 'nothing, and take the file away',
  },
  {
    pattern: /\.(?:docx?|odt|rtf|pdf|pages|xlsx?|ods|pptx?)$/i,
    found: 'a file of another program, which is no page',
    write: 'its words in a page that "npm run new" begins, and take this file away',
  },
];

/**
 * A picture may have the name that a phone or scanner gave it, because it is published under another. But every computer must be able to
 * store the file.
 */
function pictureName(path: string, parts: readonly string[]): Diagnostic[] {
  if (parts.length > 2)
    return [
      fault(path, 'file-place', 'the file', 'a picture in a folder below the collection', `it straight in ${parts[0]}/, beside its page`),
    ];
  const name = parts[1]!;
  const dot = name.lastIndexOf('.');
  if (RESERVED.test(name.slice(0, dot).toLowerCase()) && !name.startsWith('index.'))
    return [fault(path, 'file-name', "the file's name", `"${name}", which means something else to some computers`, 'a longer name')];
  if (name.length <= 120 && !/[<>:"|?*\\()[\]\u0000-\u001F\u007F]|^ | \./.test(name.replace(/\((?=[^()]*\))|(?<=\([^()]*)\)/g, '')))
    return [];
  return [
    fault(
      path,
      'file-name',
      "the file's name",
      `"${name}", which some computers or a page cannot carry safely`,
      `"${plainName(name.slice(0, dot)).slice(0, 60)}${name.slice(dot)}"`,
    ),
  ];
}

/** Equal for two names that a host or a file system may treat as one. */
export const sameName = (path: string): string => path.toLowerCase().normalize('NFC').replace(/[ _]+/g, '-');

function twins(files: string[]): Diagnostic[] {
  const seen = new Map<string, string>();
  return files.flatMap((path) => {
    const key = sameName(path);
    const other = seen.get(key);
    seen.set(key, path);
    return other
      ? [
          fault(
            path,
            'same-name',
            "the file's name",
            `a name that differs from "${other}" only in letter case, spaces or signs`,
            'a name of its own',
          ),
        ]
      : [];
  });
}

const plainName = (name: string): string =>
  name
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '') || 'a-name';
