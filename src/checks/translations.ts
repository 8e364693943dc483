/*
 * Reports translations that do not say what their originals say. A grave difference is a fault, and the original is shown in place of the
 * translation, so no page is kept back. What is merely not translated yet, or translated from an earlier text, is a hint.
 */
import type { Diagnostic } from '../source/diagnostic.ts';
import type { Folder, Translation } from '../source/folder.ts';
import { pathOfOriginal, translationIn } from '../source/translations.ts';
import { textFieldsOf } from '../schemas/translations.ts';

/** True for what is reported in a file with a translation: it stops no build. */
export const isInTranslation = ({ path }: Pick<Diagnostic, 'path'>): boolean => translationIn(path) !== null;

/** In the folder's own files. Those of a book are reported where the book is checked. */
const ownOf = ({ translations }: Folder): Translation[] => translations.filter(({ file }) => !file.path.startsWith('books/'));

export function translationFaults(folder: Folder): Diagnostic[] {
  return [
    ...folder.unreadTranslations.filter(({ path }) => !path.startsWith('books/')),
    ...ownOf(folder).flatMap((translation) => [...strayFaults(translation), ...inFile(translation, true)]),
  ];
}

export const translationHints = (folder: Folder): Diagnostic[] => ownOf(folder).flatMap((translation) => inFile(translation, false));

const inFile = ({ file, differences }: Translation, isGrave: boolean): Diagnostic[] =>
  differences
    .filter((each) => each.isGrave === isGrave)
    .map(({ line, column, field, found, write }) => ({ path: file.path, line, column, rule: 'translation', field, found, write }));

/** A translation of nothing, or of what is never translated. */
function strayFaults({ file, original }: Translation): Diagnostic[] {
  const at = (found: string, write: string): Diagnostic[] => [
    { path: file.path, line: 1, column: 1, rule: 'translation', field: 'the file', found, write },
  ];
  if (textFieldsOf(file.collection) === null)
    return at(`a translation in ${file.collection}/, which is not translated`, 'nothing, and take the file away');
  if (original === null) return at('a translation without its original', `${pathOfOriginal(file.path)} beside it, or take the file away`);
  if (pathOfOriginal(file.path).split('.').pop() === original.path.split('.').pop()) return [];
  return at('an ending that the original does not have', `the file with the ending of ${original.path}`);
}

export function translationsLine(faults: readonly Diagnostic[]): string {
  const files = new Set(faults.map(({ path }) => path)).size;
  return files === 1
    ? '1 translation has faults; its original is shown in its place.'
    : `${files} translations have faults; their originals are shown in their place.`;
}
