/* Checks values that YAML would silently cut or change: text after " #", and keys with odd spaces. */
import type { Diagnostic } from '../source/diagnostic.ts';
import type { Entry, Folder } from '../source/folder.ts';
import { fieldName, writtenIn } from './fields.ts';
import { lineAt } from './place.ts';

export function typedFaults(folder: Folder): Diagnostic[] {
  return writtenIn(folder).flatMap((entry) => entry.fields.cut.map((cut) => cutFault(entry, cut)));
}

function cutFault(entry: Entry, { path, comment, line, column }: Entry['fields']['cut'][number]): Diagnostic {
  const typed = lineAt(entry, line);
  const whole = typed.slice(column - 1).trim();
  return {
    path: entry.path,
    line,
    column,
    rule: 'cut-value',
    field: fieldName(path),
    found: `a number sign, behind which "${comment.trim()}" would be lost`,
    write: 'the whole value in quotes, or the remark on a line of its own',
    ...(comment.startsWith(' ') ? {} : { corrected: `${typed.slice(0, column - 1)}"${unquoted(whole).replace(/(["\\])/g, '\\$1')}"` }),
  };
}

/** `"a" #1` as `a #1`. */
const unquoted = (value: string): string => value.replace(/^(["'])(.*)\1(\s+#)/, '$2$3');
