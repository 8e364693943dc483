/*
 * Compares a translation with its original: fields that are words, tags and steps in the same order, the same numbers, as many sentences.
 * A grave difference could lead a reader wrong, so such a translation is not shown and the original stands in its place.
 */
import type { Nodes, Root } from 'mdast';
import { isDay } from '../../shared/days/day.ts';
import { otherNumbers } from '../../shared/numbers/numbers-in.ts';
import { nearName } from '../../shared/words/near-name.ts';
import { collections } from '../schemas/collections.ts';
import { MAY_LACK, textFieldsOf, TRANSLATION_FIELDS, type TextFields, type Texts } from '../schemas/translations.ts';
import { quoted } from './diagnostic.ts';
import type { Entry } from './folder.ts';
import { attribute, isBoxed, isTag, plainText, walk, type TagNode } from './prose.ts';
import { hashOfOriginal, isRow, rowFor, translated, valueAt } from './translations.ts';

export type Difference = {
  line: number;
  column: number;
  field: string;
  found: string;
  write: string;
  /** The translation is not shown before it is mended. */
  isGrave: boolean;
};

type Message = Pick<Difference, 'field' | 'found' | 'write'>;
type Path = readonly PropertyKey[];
/** What a comparison needs, wherever in the fields it is. */
type Comparing = {
  report: (path: Path, message: Omit<Message, 'field'>, isGrave?: boolean) => void;
  numbersOf: (original: readonly string[], translation: readonly string[]) => ReturnType<typeof otherNumbers>;
};

export function differences(original: Entry, translation: Entry): Difference[] {
  const found: Difference[] = [];
  const tongue = original.tongue ?? 'en';
  const other = translation.tongue ?? 'en';
  const comparing: Comparing = {
    report: (path, message, isGrave = true) => {
      const { line, column } = translation.fields.placeOf(path);
      found.push({ line, column, field: nameOf(path), ...message, isGrave });
    },
    numbersOf: (texts, others) => otherNumbers({ texts, tongue }, { texts: others, tongue: other }),
  };
  for (const { line, column, comment } of translation.fields.cut)
    found.push({
      line,
      column,
      field: 'the line',
      found: `"#${comment}", which ends the text before it`,
      write: 'the text in quotes',
      isGrave: true,
    });
  inFields(original, translation, comparing);
  if (original.tree && translation.tree) found.push(...inWords(original, original.tree, translation, translation.tree, comparing));
  if (found.every(({ isGrave }) => !isGrave)) found.push(...unfit(original, translation));
  return found;
}

function inFields(original: Entry, translation: Entry, comparing: Comparing): void {
  const isCaution = original.collection === 'cautions';
  const value = (translation.fields.value ?? {}) as Readonly<Record<string, unknown>>;
  compareRecords(textFieldsOf(original.collection) ?? {}, original.fields.value, value, [], comparing, isCaution);
  const { report } = comparing;
  if (value.checked !== undefined && !isDay(String(value.checked)))
    report(['checked'], {
      found: quoted(value.checked),
      write: 'the day on which a speaker who keeps bees checked it, such as 2026-04-18',
    });
  const hash = hashOfOriginal(original);
  if (value.of === undefined) report(['of'], { found: 'nothing', write: `"of: ${hash}", which names the text that was translated` }, false);
  else if (String(value.of) !== hash)
    report(
      ['of'],
      { found: `${quoted(value.of)}, an earlier text of ${original.path}`, write: `what has changed there, and then "of: ${hash}"` },
      isCaution,
    );
}

const nameOf = (path: Path): string =>
  path.map((key, index) => (typeof key === 'number' ? ` ${key + 1}` : `${index === 0 ? '' : ', '}${String(key)}`)).join('') || 'the fields';

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** `isWhole`: a text that is not translated is grave. */
function compareRecords(
  fields: TextFields,
  original: unknown,
  translation: unknown,
  path: Path,
  comparing: Comparing,
  isWhole = false,
): void {
  const { report } = comparing;
  if (!isRecord(translation)) return report(path, { found: quoted(translation), write: 'indented lines, each "name: text"' });
  const held = isRecord(original) ? original : {};
  const allowed = [...Object.keys(fields), ...(path.length === 0 ? TRANSLATION_FIELDS : ['id'])];
  for (const name of Object.keys(translation).filter((each) => !allowed.includes(each))) {
    const near = name in held ? null : nearName(name, allowed);
    report([...path, name], {
      found: `"${name}", a field that is not translated`,
      write: near ? `"${near}"` : 'nothing: it is the same in every language',
    });
  }
  for (const [name, texts] of Object.entries(fields)) {
    const at = [...path, name];
    const isNeeded = path.length === 0 && (texts === 'text' || texts === 'texts') && !MAY_LACK.has(name);
    if (held[name] === undefined) {
      if (translation[name] !== undefined) report(at, { found: 'a text that the original does not have', write: 'nothing' }, false);
    } else if (translation[name] !== undefined) compareTexts(texts, held[name], translation[name], at, comparing);
    else if (isNeeded) report(at, { found: 'nothing', write: `"${name}:" in the language of the file` }, isWhole);
  }
}

function compareTexts(texts: Texts, original: unknown, translation: unknown, path: Path, comparing: Comparing): void {
  if (texts === 'text') return compareText(original, translation, path, comparing);
  if (texts === 'by-name') {
    for (const [name, text] of Object.entries(isRecord(translation) ? translation : {}))
      compareText(isRecord(original) ? original[name] : null, text, [...path, name], comparing);
    return;
  }
  if (!Array.isArray(texts) && typeof texts !== 'string')
    return compareRecords(texts as TextFields, original, translation, path, comparing);
  if (!Array.isArray(translation))
    return comparing.report(path, { found: quoted(translation), write: 'a list: one line each, beginning with "- "' });
  if (isRow(texts)) compareRows(texts[0], original as unknown[], translation as unknown[], path, comparing);
  else compareLists(texts === 'texts', original as unknown[], translation as unknown[], path, comparing);
}

function compareRows(
  fields: TextFields,
  original: readonly unknown[],
  translation: readonly unknown[],
  path: Path,
  comparing: Comparing,
): void {
  const taken = new Set<number>();
  original.forEach((row, at) => {
    const found = rowFor(row, at, translation);
    if (!found) return;
    taken.add(found.index);
    compareRecords(fields, row, found.row, [...path, found.index], comparing);
  });
  translation.forEach((_, at) => {
    if (!taken.has(at))
      comparing.report([...path, at], { found: 'a row that the original does not have', write: 'the id of one of its rows, or nothing' });
  });
}

/** `isSame`: as many sentences as in the original, one for one. */
function compareLists(
  isSame: boolean,
  original: readonly unknown[],
  translation: readonly unknown[],
  path: Path,
  comparing: Comparing,
): void {
  if (isSame && translation.length !== original.length)
    return comparing.report(path, {
      found: `${translation.length} of ${original.length} sentences`,
      write: 'each sentence of the original, in its order',
    });
  translation.forEach((text, at) => compareText(isSame ? original[at] : null, text, [...path, at], comparing));
}

/** A text of its own has no `original`. */
function compareText(original: unknown, translation: unknown, path: Path, { report, numbersOf }: Comparing): void {
  if (typeof translation !== 'string' || translation.trim() === '')
    return report(path, { found: quoted(translation), write: 'a text, in quotes where it is a number' });
  if (translation.includes('<!--')) report(path, { found: '"<!--"', write: 'nothing: readers would see it' });
  if (typeof original !== 'string') return;
  const { missing, added } = numbersOf([original], [translation]);
  if (missing.length + added.length > 0)
    report(
      path,
      numbersMessage(
        missing,
        added.map(({ number }) => number),
      ),
    );
}

const numbersMessage = (missing: readonly string[], added: readonly string[]): Omit<Message, 'field'> => ({
  found: added.length > 0 ? `the number ${added.join(', ')}` : `no ${missing.join(', ')}`,
  write: missing.length > 0 ? `the number of the original: ${missing.join(', ')}` : 'only numbers of the original',
});

/** A mark that both texts have in the same order: a tag, a heading, a line of a list, a link. */
type Mark = { shown: string; node: Nodes | TagNode };

function inWords(original: Entry, own: Root, translation: Entry, theirs: Root, { numbersOf }: Comparing): Difference[] {
  const at = (node: Nodes | TagNode | undefined): { line: number; column: number } => ({
    line: translation.bodyLine + (node?.position?.start.line ?? 1) - 1,
    column: node?.position?.start.column ?? 1,
  });
  const inOrder = (marks: (tree: Root) => Mark[], isGrave: boolean): Difference[] => {
    const [expected, held] = [marks(own), marks(theirs)];
    const first = Array.from({ length: Math.max(expected.length, held.length) }, (_, nth) => nth).find(
      (nth) => expected[nth]?.shown !== held[nth]?.shown,
    );
    if (first === undefined) return [];
    const [wanted, other] = [expected[first], held[first]];
    const line = wanted && original.bodyLine + (wanted.node.position?.start.line ?? 1) - 1;
    return [
      {
        ...at(other?.node ?? held.at(-1)?.node),
        field: 'the words',
        found: other ? other.shown : 'the end of the text',
        write: wanted ? `${wanted.shown}, which the original has here (line ${line})` : 'nothing: the original ends before it',
        isGrave,
      },
    ];
  };
  const { missing, added } = numbersOf(
    textsIn(own).map(({ text }) => text),
    textsIn(theirs).map(({ text }) => text),
  );
  const numbers =
    missing.length + added.length === 0
      ? []
      : [
          {
            ...at(textsIn(theirs)[added[0]?.at ?? 0]?.node),
            field: 'the words',
            ...numbersMessage(
              missing,
              added.map(({ number }) => number),
            ),
            isGrave: true,
          },
        ];
  const comment = textsIn(theirs).find(({ text }) => text.includes('<!--'));
  return [
    ...inOrder(marksIn, true),
    ...inOrder(linksIn, false),
    ...numbers,
    ...(comment
      ? [{ ...at(comment.node), field: 'the words', found: '"<!--"', write: 'nothing: readers would see it', isGrave: true }]
      : []),
  ];
}

/** The words of an attribute differ from language to language. */
const SAID = new Set(['time']);

function marksIn(tree: Root): Mark[] {
  return [...walk(tree)].flatMap((node): Mark[] => {
    if (node.type === 'heading') return [{ node, shown: `a heading "${'#'.repeat(node.depth)}"` }];
    if (node.type === 'listItem') return [{ node, shown: isBoxed(node) ? 'a step "- [ ]"' : 'a line of a list' }];
    if (node.type === 'tableRow') return [{ node, shown: 'a row of a table' }];
    if (!isTag(node)) return [];
    const { attributes: all } = node as TagNode;
    const attributes = all.filter(({ name }) => !SAID.has(name)).map(({ name, value }) => ` ${name}="${value ?? ''}"`);
    return [{ node, shown: `<${node.name}${attributes.sort().join('')}>` }];
  });
}

const linksIn = (tree: Root): Mark[] =>
  [...walk(tree)].flatMap((node): Mark[] =>
    node.type === 'link' || node.type === 'image'
      ? [{ node, shown: `${node.type === 'link' ? 'a link to' : 'the picture'} ${node.url}` }]
      : [],
  );

function textsIn(tree: Root): { text: string; node: Nodes | TagNode }[] {
  return [...walk(tree)].flatMap((node): { text: string; node: Nodes | TagNode }[] => {
    if (isTag(node)) return attribute(node, 'time') === undefined ? [] : [{ node, text: attribute(node, 'time')! }];
    // Of a paragraph as a whole, because a day may stand across a mark.
    return node.type === 'paragraph' || node.type === 'heading' || node.type === 'tableCell' ? [{ node, text: plainText(node) }] : [];
  });
}

/** Whether a translation can be shown: it could be parsed as it is, and no difference is grave. */
export const isFit = (file: Entry, found: readonly Difference[]): boolean =>
  !file.isMended &&
  file.fields.value !== undefined &&
  (file.tree !== null || !file.path.endsWith('.mdx')) &&
  found.every(({ isGrave }) => !isGrave);

type Schema = { safeParse: (value: unknown) => { success: boolean; error?: { issues: { path: PropertyKey[]; message: string }[] } } };

/** What the schema refuses of the entry in the words of the translation, such as a blank where a text is needed. */
function unfit(original: Entry, translation: Entry): Difference[] {
  const schema = (collections as Readonly<Record<string, { schema: Schema }>>)[original.collection]?.schema;
  const before = schema?.safeParse(original.fields.value);
  const after = before?.success ? schema!.safeParse(translated(original, translation).fields.value) : before;
  return (before?.success ? (after?.error?.issues ?? []) : []).map(({ path, message }) => {
    const { line, column } = translation.fields.placeOf(path);
    return { line, column, field: nameOf(path), found: quoted(valueAt(translation.fields.value, path)), write: message, isGrave: true };
  });
}
