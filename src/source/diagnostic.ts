/*
 * Diagnostic: one mistake of an author, in the form that check, build and dev all print: `path:line:column rule: field: found X; write
 * Y`. The corrected line may follow below, indented by four.
 */
export type Diagnostic = {
  /** Path inside the content folder, with forward slashes. */
  path: string;
  line: number;
  column: number;
  /** Short name of the broken rule. */
  rule: string;
  field: string;
  found: string;
  write: string;
  /** The corrected line, where it is known. */
  corrected?: string;
};

export function formatDiagnostic(fault: Diagnostic): string {
  const head = visible(
    `${fault.path}:${fault.line}:${fault.column} ${fault.rule}: ${fault.field}: found ${fault.found}; write ${fault.write}`,
  );
  return fault.corrected === undefined ? head : `${head}\n    ${fault.corrected}`;
}

/** Sorts diagnostics by file, then by line. */
export function inReadingOrder(faults: readonly Diagnostic[]): Diagnostic[] {
  return [...faults].sort(
    (a, b) => compare(a.path, b.path) || a.line - b.line || a.column - b.column || compare(a.rule, b.rule) || compare(a.field, b.field),
  );
}

/** Quotes a found value: short, on one line. */
export function quoted(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (value === null || value === '') return 'a blank';
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : 'a list';
  if (typeof value === 'object') return 'indented lines';
  const text = visible(String(value).replace(/\s+/g, ' '));
  return typeof value === 'string' ? `"${text.length > 60 ? `${text.slice(0, 57)}...` : text}"` : text;
}

/** Control characters, direction marks and invisible characters. A file name may contain any of them. */
const UNSEEN = /[\p{Cc}\p{Cs}\u00AD\u061C\u180E\u200B\u200C\u200E\u200F\u2028-\u202E\u2060-\u2069\uFEFF\u{E0000}-\u{E007F}]/gu;

const visible = (text: string): string =>
  text.replace(UNSEEN, (sign) => `<U+${sign.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}>`);

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
