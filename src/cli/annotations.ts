/*
 * On the code host's own machines a line of this form is shown as a sentence beside the line of the change it speaks of,
 * so that whoever edits in a browser sees it there. The form is the host's: its signs in words are written as %25 and so on.
 */
import type { Diagnostic } from '../source/diagnostic.ts';

/** One line a fault; `folder` is the content folder as seen from the repository's first folder. */
export function annotations(faults: readonly Diagnostic[], folder: string, level: 'error' | 'notice' = 'error'): string[] {
  return faults.map(({ path, line, column, rule, field, found, write }) => {
    const where = Object.entries({ file: folder === '' ? path : `${folder}/${path}`, line, col: column, title: rule }).map(
      ([name, value]) => `${name}=${property(String(value))}`,
    );
    return `::${level} ${where.join(',')}::${words(`${field}: found ${found}; write ${write}`)}`;
  });
}

const words = (text: string): string => text.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
const property = (text: string): string => words(text).replaceAll(':', '%3A').replaceAll(',', '%2C');
