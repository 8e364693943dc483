/*
 * Annotations for the code host, which shows such a line beside the changed line of the file, where a person who edits in a
 * browser sees it. The host defines the syntax, with special characters as %25 and so on.
 */
import type { Diagnostic } from '../source/diagnostic.ts';

/** One line per diagnostic. `folder` is the content folder relative to the root of the repository. */
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
