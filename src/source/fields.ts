/*
 * Parses the fields of an entry: YAML 1.2 with the core schema, so that days and times stay text as typed. Every value keeps its
 * position, so that a diagnostic can name line and column.
 */
import { isAlias, isMap, isNode, isPair, isScalar, LineCounter, parseDocument, visit, type Document, type YAMLError } from 'yaml';
import type { Correction } from '../../shared/result.ts';
import type { Diagnostic } from './diagnostic.ts';

/** `path`: the file, where it is not the entry's own. */
export type Place = { line: number; column: number; path?: string };

export type Fields = {
  /** Undefined where the fields could not be parsed. */
  value: unknown;
  /** Line and column (from 1) of the value, or of the nearest field above it. */
  placeOf: (path: readonly PropertyKey[]) => Place;
  /** Line and column of a field's name. */
  placeOfName: (path: readonly PropertyKey[]) => Place;
  /** Values followed by a number sign on the same line, and the text that YAML drops there. */
  cut: { path: PropertyKey[]; comment: string; line: number; column: number }[];
  /** Lines that were left out because they could not be parsed, with their numbers. */
  lost?: { line: number; text: string }[];
};

const BLOCK = /^((?:[ \t]*\n)*)---[ \t]*\n([\s\S]*?)(?:\n---[ \t]*(?:\n|$))/;
/** A line of dashes, stars or dots of any length, which a person takes for the front matter delimiter. */
const LIKE_A_LINE = /^[-–—_*.]{1,6}[ \t]*$/;

/** Splits a page into front matter and words. `bodyLine` is the line of the file on which the words begin. */
export function splitPage(text: string): { fields: string; fieldsLine: number; body: string; bodyLine: number } | null {
  const match = BLOCK.exec(text.startsWith('---\n---') ? text.replace('---\n', '---\n\n') : text);
  if (!match) return null;
  const whole = match[0];
  return {
    fields: match[2]!,
    fieldsLine: match[1]!.split('\n').length + 1,
    body: text.slice(whole.length),
    bodyLine: whole.split('\n').length,
  };
}

/** The reason why a page could not be split. */
export function unsplit(path: string, text: string): Diagnostic {
  const message = (line: number, found: string, write: string): Diagnostic => ({
    path,
    line,
    column: 1,
    rule: 'fields',
    field: 'the file',
    found,
    write,
  });
  const lines = text.split('\n');
  const first = lines.findIndex((line) => line.trim() !== '');
  if (!LIKE_A_LINE.test(lines[first] ?? ''))
    return message(1, 'no fields at its head', '"---" on the first line, then the fields, then "---" on a line of its own');
  if (lines[first]!.trim() !== '---') return message(first + 1, `"${lines[first]!.trim()}" above the fields`, '"---"');
  const second = lines.findIndex((line, index) => index > first && LIKE_A_LINE.test(line));
  if (second >= 0) return message(second + 1, `"${lines[second]!.trim()}" below the fields`, '"---"');
  const last = lines.findIndex((line, index) => index > first && line.trim() !== '' && !/^\s*#|^\s*-?\s*[\w-]+:|^\s+/.test(line));
  return message(last < 0 ? lines.length : last + 1, 'fields that do not end', '"---" on a line of its own below them');
}

/** More faults of syntax than this in one file are reported after the first ones are mended. */
const MOST_ROUNDS = 20;

/**
 * Parses fields that begin on `firstLine` of the file at `path`. After a fault the line is corrected or left out and the rest is parsed
 * again, so that one fault hides no other.
 */
export function readFields(path: string, text: string, firstLine: number): { fields: Fields; faults: Diagnostic[] } {
  const faults: Diagnostic[] = [];
  const lines = text.split('\n');
  const lost: { line: number; text: string }[] = [];
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const read = parseFields(path, lines.join('\n'), firstLine);
    const fault = read.faults[0];
    if (fault === undefined) return { fields: { ...read.fields, lost }, faults };
    const at = Math.min(fault.line - firstLine, lines.length - 1);
    const isNew = faults.every(({ line }) => line !== fault.line);
    if (isNew) faults.push(fault);
    else if (lines[at] === '') break;
    if (isNew && fault.corrected !== undefined) lines[at] = fault.corrected;
    else lost.push(...leaveOut(lines, at, isEndOfOne(lines[at]!)).map((each) => ({ ...each, line: each.line + firstLine })));
  }
  return { fields: { ...parseFields(path, '', firstLine).fields, value: undefined }, faults };
}

/** A line of dashes ends the fields, so what follows belongs to another file. */
const isEndOfOne = (line: string): boolean => /^(?:---|\.\.\.)\s*$/.test(line);

/** Empties a line and what is indented below it, or all below it. Returns what was there, with line numbers from 0. */
function leaveOut(lines: string[], at: number, isAll: boolean): { line: number; text: string }[] {
  const indent = indentOf(lines[at]!);
  const isList = /:\s*$/.test(lines[at]!);
  let end = at + 1;
  while (end < lines.length && (isAll || indentOf(lines[end]!) > indent || (isList && /^\s*- /.test(lines[end]!)))) end += 1;
  return lines.splice(at, end - at, ...Array.from({ length: end - at }, () => '')).map((text, index) => ({ line: at + index, text }));
}

/** An empty line belongs to what is above it. */
const indentOf = (line: string): number => (line.trim() === '' ? Infinity : line.length - line.trimStart().length);

function parseFields(path: string, text: string, firstLine: number): { fields: Fields; faults: Diagnostic[] } {
  const counter = new LineCounter();
  const document = parseDocument(text, { schema: 'core', version: '1.2', lineCounter: counter, prettyErrors: false, uniqueKeys: true });
  const place = (offset: number): { line: number; column: number } => {
    const { line, col } = counter.linePos(offset);
    return { line: Math.max(line, 1) + firstLine - 1, column: Math.max(col, 1) };
  };
  const errors: readonly YAMLError[] = [...document.errors, ...document.warnings];
  const open = errors.length > 0 ? (oddIndent(text) ?? unclosed(text, errors[0]!.pos[0])) : null;
  const faults = open
    ? [{ path, ...place(open.offset), rule: 'fields', field: 'the line', ...open.message }]
    : errors
        .map((error): Diagnostic => {
          const at = place(error.pos[0]);
          return { path, ...at, rule: 'fields', field: 'the line', ...explain(error.code, lineAt(text, error.pos[0])) };
        })
        .filter(({ line }, index, all) => all.findIndex((other) => other.line === line) === index);
  if (errors.length === 0)
    faults.push(
      ...pointerFaults(document, text).map(({ offset, message }): Diagnostic => ({
        path,
        ...place(offset),
        rule: 'fields',
        field: 'the line',
        ...message,
      })),
    );
  return {
    fields: {
      value: faults.length === 0 ? valueOf(document, faults, path, firstLine) : undefined,
      placeOf: (keys) => place(offsetOf(document, keys, false)),
      placeOfName: (keys) => place(offsetOf(document, keys, true)),
      cut: cutsIn(document, text, place),
    },
    faults,
  };
}

type Said = Pick<Diagnostic, 'found' | 'write' | 'corrected'>;

/**
 * Non-breaking and other odd spaces that look like plain ones but are no indentation, or a first field that is indented more than the
 * others.
 */
function oddIndent(text: string): { offset: number; message: Said } | null {
  const first = /^(?:[ ]*(?:#.*)?\n)*([ ]+)([\w-]+:.*)$/m.exec(text);
  if (first && first.index === 0 && /^[\w-]+:/m.test(text))
    return {
      offset: first[0].length - first[2]!.length,
      message: {
        found: `${first[1]!.length === 1 ? 'a space' : 'spaces'} before the first field`,
        write: 'every field at the start of its line',
        corrected: first[2]!,
      },
    };
  const match = /^[ ]*[\u00A0\u2000-\u200A\u202F\u3000][\s]*(?=\S)/m.exec(text);
  return (
    match && {
      offset: match.index,
      message: {
        found: 'a space of another kind at the start of the line',
        write: 'plain spaces',
        corrected: `${match[0].replace(/\s/g, ' ')}${lineAt(text, match.index + match[0].length).trimStart()}`,
      },
    }
  );
}

/** The first value before `end` with an unclosed quote or bracket. The lines after it are not the cause. */
function unclosed(text: string, end: number): { offset: number; message: Said } | null {
  for (const match of text.matchAll(/^([ ]*(?:- )?(?:[\w-]+:[ ]+)?)(["'[{])(.*)$/gm)) {
    const [, before, sign, rest] = match as unknown as [string, string, string, string];
    if (match.index > end) return null;
    const close = { '"': '"', "'": "'", '[': ']', '{': '}' }[sign]!;
    if (/^[[{]/.test(sign) && /^[^"]*(?:"[^"]*"[^"]*)*"[^"]*$/.test(rest))
      return {
        offset: match.index + before.length + 1 + rest.lastIndexOf('"'),
        message: { found: '" that is not closed', write: 'another " behind the words that it begins' },
      };
    if (rest.replace(/\\./g, '').includes(close)) continue;
    const isQuote = sign === close;
    return {
      offset: match.index + before.length,
      message: {
        found: `${sign} that is not closed`,
        write: isQuote ? `another ${sign} at the end` : `${close} at the end, or the value in quotes`,
        corrected: isQuote ? `${before}${sign}${rest.trimEnd()}${sign}` : `${before}"${sign}${rest.trimEnd()}"`,
      },
    };
  }
  return null;
}

/** `*words*`, `&words`, `? [names]` and `0x7E3` have another meaning in YAML, which no author intends. */
function pointerFaults(document: Document, text: string): { offset: number; message: Said }[] {
  const faults: { offset: number; message: Said }[] = [];
  visit(document, {
    Pair(_, { key }) {
      if (isNode(key) && key.range && !isScalar(key) && !isAlias(key))
        faults.push({ offset: key.range[0], message: { found: 'brackets where the name of a field should be', write: '"name: value"' } });
    },
    Node(_, node) {
      if (isScalar(node) && typeof node.value === 'number' && Number.isFinite(node.value) && /[xoe]/i.test(node.source ?? '')) {
        faults.push({
          offset: node.range![0],
          message: { found: `${node.source}, which is read as ${node.value}`, write: 'the number in plain digits' },
        });
      }
      const anchor = 'anchor' in node ? node.anchor : undefined;
      if (!node.range || (anchor === undefined && !isAlias(node))) return;
      const line = lineAt(text, node.range[0]);
      const typed = /^(\s*(?:- )?(?:[\w-]+:\s+)?)(.*)$/.exec(line)!;
      faults.push({
        offset: node.range[0],
        message: {
          found: `${typed[2]!.charAt(0)} at the start of a value, which means something else there`,
          write: 'the value in quotes',
          corrected: `${typed[1]}"${typed[2]!.replace(/"/g, '\\"')}"`,
        },
      });
    },
  });
  return faults;
}

/** Refuses a file with aliases that would expand without limit. */
function valueOf(document: Document, faults: Diagnostic[], path: string, line: number): unknown {
  try {
    return document.toJS({ maxAliasCount: 20 }) as unknown;
  } catch {
    faults.push({
      path,
      line,
      column: 1,
      rule: 'fields',
      field: 'the fields',
      found: 'values that cannot be read',
      write: 'each as "name: value"',
    });
    return undefined;
  }
}

function cutsIn(document: Document, text: string, place: (offset: number) => { line: number; column: number }): Fields['cut'] {
  const cuts: Fields['cut'] = [];
  visit(document, {
    Scalar(key, node, above) {
      if (!node.range || key === 'key' || node.type === 'BLOCK_FOLDED' || node.type === 'BLOCK_LITERAL') return;
      const behind = /^[ \t]*#(.*)/.exec(text.slice(node.range[1]));
      const blank = node.range[0] === node.range[1];
      if (!behind || (blank && /^[\s#]/.test(behind[1]!))) return;
      const keys = [...above, node].flatMap((each, index, all): PropertyKey[] => {
        if (isPair(each)) return [String(each.key)];
        const parent = all[index - 1] as { items?: unknown[] } | undefined;
        return parent?.items && !isPair(each) && !isMap(parent) ? [parent.items.indexOf(each)] : [];
      });
      cuts.push({ path: keys, comment: behind[1]!, ...place(blank ? text.indexOf('#', node.range[1]) : node.range[0]) });
    },
  });
  return cuts;
}

function offsetOf(document: Document, path: readonly PropertyKey[], ofName: boolean): number {
  for (let length = path.length; length > 0; length -= 1) {
    const keys = path.slice(0, length);
    if (ofName || length < path.length) {
      const parent = length === 1 ? document.contents : document.getIn(keys.slice(0, -1), true);
      const pair = isMap(parent) ? parent.items.find((item) => String(item.key) === String(keys.at(-1))) : undefined;
      if (pair && isNode(pair.key) && pair.key.range) return pair.key.range[0];
    }
    const node = document.getIn(keys, true);
    if (isNode(node) && node.range) return node.range[0];
  }
  return 0;
}

function explain(code: string, line: string): Correction & { corrected?: string } {
  const clear = line.trim();
  const indent = line.slice(0, line.length - line.trimStart().length);
  if (code === 'DUPLICATE_KEY') return { found: `the field "${clear.split(':')[0]}" twice`, write: 'it once' };
  if (code === 'MULTIPLE_DOCS')
    return { found: '"---" among the fields', write: 'nothing; --- stands only above and below the fields of a page' };
  if (clear.startsWith('//'))
    return { found: 'a remark behind //', write: '"# " before a remark', corrected: `${indent}# ${clear.slice(2).trim()}` };
  const glued = /^((?:- )?[a-z][\w-]*)(?::(?=\S)|\s*[：=]\s*)(.*)$/.exec(clear);
  if (glued)
    return { found: `"${clear}", without ": " behind the name`, write: '"name: value"', corrected: `${indent}${glued[1]}: ${glued[2]}` };
  if (code === 'TAB_AS_INDENT') return { found: 'a tab at the start of the line', write: 'spaces' };
  const name = /^((?:- )?[\w-]+):\s+(.*: .*)$/.exec(clear);
  if (name)
    return {
      found: `a colon inside the words "${clear}"`,
      write: 'the words in quotes',
      corrected: `${indent}${name[1]}: "${name[2]!.replace(/"/g, '\\"')}"`,
    };
  const odd = /^((?:- )?[\w-]+): +((?:["'*&!%@`{}[\]|>]|[-?,](?=\s)).*)$/.exec(clear);
  if (odd)
    return {
      found: `"${clear}", whose value begins with a sign that means something else`,
      write: 'the value in quotes',
      corrected: `${indent}${odd[1]}: "${odd[2]!.replace(/"/g, '\\"')}"`,
    };
  return {
    found: `"${clear}", which does not fit the lines around it`,
    write: '"name: value", indented like its neighbours, with the value in quotes if it holds ": ", "#" or a quote',
  };
}

function lineAt(text: string, offset: number): string {
  const start = text.lastIndexOf('\n', Math.max(0, offset - 1)) + 1;
  const end = text.indexOf('\n', offset);
  return text.slice(start, end === -1 ? undefined : end);
}
