/*
 * The answers of `new -- club`: from a file, all wrong ones at once, or from a terminal, one at a time until it is right. Both give the
 * same record, and neither writes anything.
 */
import { createInterface } from 'node:readline';
import { parse } from 'yaml';
import { err, ok, type Result } from '../../../shared/result.ts';
import { nearOrAll } from '../../../shared/words/near-name.ts';
import { decode } from '../../source/decode.ts';
import { inReadingOrder, type Diagnostic } from '../../source/diagnostic.ts';
import { readFields } from '../../source/fields.ts';
import type { Read } from './answer-values.ts';
import { halfOf } from './land.ts';
import { QUESTIONS, type Context, type Given, type Question } from './questions.ts';

/** What follows from an answer, without a question. */
const withHalf = (given: Given): Given => {
  const half = given.land === undefined ? null : halfOf(given.land);
  return half === null ? given : { ...given, hemisphere: half };
};

const readAnswer = (question: Question, typed: string, given: Given, context: Context): Read =>
  question.read(typed.replace(/\s+/g, ' ').trim(), given, context);

/** Reads an answers file: lines `key: answer`. `given` are answers from the command line. */
export function answersFrom(path: string, bytes: Uint8Array, given: Given, context: Context): Result<Given, Diagnostic[]> {
  const decoded = decode(path, bytes);
  if (!decoded.ok) return err([decoded.reason]);
  const { fields, faults } = readFields(path, decoded.value, 1);
  if (faults.length > 0) return err(faults);
  // As text, so that a telephone number keeps its first zero.
  const typed = (parse(decoded.value, { schema: 'failsafe' }) ?? {}) as Record<string, unknown>;
  const fault = (key: string, found: string, write: string, isName = false): Diagnostic => ({
    path,
    ...(key in typed ? (isName ? fields.placeOfName : fields.placeOf)([key]) : { line: 1, column: 1 }),
    rule: 'answer',
    field: key,
    found,
    write,
  });
  if (typeof typed !== 'object' || Array.isArray(typed))
    return err([fault('the file', 'no lines "key: answer"', 'an answer a line, such as "land: NZ-WKO"')]);
  const wrong = Object.keys(typed).flatMap((key) => strangeKey(key, fault));
  let answers: Given = withHalf(given);
  for (const question of QUESTIONS) {
    const { key } = question;
    if (key in given) {
      if (key in typed && readAnswer(question, String(typed[key]), answers, context).ok && String(typed[key]).toUpperCase() !== given[key])
        wrong.push(fault(key, `"${String(typed[key])}", while --${key} says ${given[key]}`, `${given[key]}, or another --${key}`));
      continue;
    }
    // Without the land nothing else can be proposed or compared.
    if (answers.land === undefined && question.key !== 'name' && question.key !== 'land') {
      const [read] = key in typed && !needsLand(question) ? [readAnswer(question, textOf(typed[key]), answers, context)] : [];
      if (read?.ok === false) wrong.push(fault(key, read.reason.found, read.reason.write));
      continue;
    }
    if (question.asked && !question.asked(answers)) {
      if (key in typed && answers[key] !== String(typed[key]))
        wrong.push(fault(key, `"${textOf(typed[key])}", which is not asked after these answers`, 'nothing: take the line out', true));
      continue;
    }
    const read = fromFile(question, typed, answers, context);
    if (read.ok) answers = withHalf({ ...answers, [key]: read.value });
    else wrong.push(fault(key, read.reason.found, read.reason.write));
  }
  return wrong.length > 0 ? err(inReadingOrder(wrong)) : ok(answers);
}

const LAND_FREE = new Set(['place', 'site', 'mistakes', 'time-zone', 'language', 'words', 'units']);
const LAND_FREE_PARTS = new Set(['inspection office', 'contact', 'meeting']);
const needsLand = ({ key, part }: Question): boolean => !LAND_FREE.has(key) && !LAND_FREE_PARTS.has(part);

const textOf = (value: unknown): string => (Array.isArray(value) ? value.join(', ') : typeof value === 'string' ? value : '');

function fromFile(question: Question, typed: Readonly<Record<string, unknown>>, given: Given, context: Context): Read {
  const { key, propose, mustConfirm } = question;
  if (key in typed) {
    const value = typed[key];
    if (typeof value !== 'string' && !(Array.isArray(value) && value.every((item) => typeof item === 'string')))
      return err({ found: 'indented lines', write: 'one answer on the line' });
    return readAnswer(question, textOf(value), given, context);
  }
  const proposed = mustConfirm ? undefined : propose?.(given, context);
  if (proposed !== undefined) return ok(proposed);
  const asked = question.ask(given).split('\n')[0]!;
  return err({ found: 'no such line', write: `"${key}:" and the answer to: ${asked}` });
}

function strangeKey(key: string, fault: (key: string, found: string, write: string, isName: boolean) => Diagnostic): Diagnostic[] {
  const keys = QUESTIONS.map((question) => question.key);
  if (keys.includes(key)) return [];
  return [fault(key, `"${key}", which is no question`, nearOrAll(key, keys), true)];
}

/**
 * Asks in a terminal, or in any two streams. Null where the input ends, or Ctrl-C is typed, before the last answer.
 */
export async function ask(
  input: NodeJS.ReadableStream,
  output: NodeJS.WritableStream,
  given: Given,
  context: Context,
): Promise<Given | null> {
  const terminal = createInterface({ input, output });
  // Without a listener of its own, Ctrl-C would end the program in the middle of a line.
  terminal.on('SIGINT', () => terminal.close());
  const lines = terminal[Symbol.asyncIterator]();
  const say = (text: string): unknown => output.write(`${text}\n`);
  let answers: Given = withHalf(given);
  const taken: string[] = [];
  const begun = new Set<string>();
  const isAsked = ({ silent, asked }: Question): boolean => !silent?.(answers, context) && (asked?.(answers) ?? true);
  const parts = (): number => new Set([...begun, ...QUESTIONS.filter(isAsked).map(({ part }) => part)]).size;
  try {
    for (const question of QUESTIONS) {
      if (question.key in answers || (question.asked && !question.asked(answers))) continue;
      const proposed = question.propose?.(answers, context);
      if (question.silent?.(answers, context)) {
        answers = { ...answers, [question.key]: proposed! };
        if (proposed) taken.push(`${question.key} ${proposed}`);
        continue;
      }
      begun.add(question.part);
      // How many parts there are depends on the land.
      say(`\n${begun.size}${answers.land ? ` of ${parts()}` : ''}  ${question.ask(answers)}`);
      for (;;) {
        terminal.setPrompt(proposed ? `[${proposed}] > ` : '> ');
        terminal.prompt();
        const { value: typed, done } = await lines.next();
        if (done) return null;
        const read = readAnswer(question, typed.trim() === '' ? (proposed ?? '') : typed, answers, context);
        if (read.ok) {
          answers = withHalf({ ...answers, [question.key]: read.value });
          break;
        }
        say(`Found ${read.reason.found}; write ${read.reason.write}.`);
      }
    }
    say(`\nTaken without a question: ${taken.join(', ')}. Change any of them in the files of the club.`);
    return answers;
  } finally {
    terminal.close();
  }
}
