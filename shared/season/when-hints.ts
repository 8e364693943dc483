/**
 * Suggestions for a `when` that cannot be parsed: what was found, and what to write. Text with only one meaning ("Oct 1 - Nov 15", "two
 * weeks before the main flow") is returned in the accepted form. A bare season or a date in numbers is not guessed.
 */
import { monthName, monthNames } from '../days/month-names.ts';
import type { Correction } from '../result.ts';
import { anchorName, anchors, ownEvents, phaseName, phases } from './phases.ts';
import { lastDay } from './when-point.ts';

const FORMS =
  '"1 October to 15 November", "in swarming", "2 weeks before main flow to main flow", "day 3 to day 5 after installing" or "any time"';
const COUNTS = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

export function betterForm(text: string, read: (text: string) => unknown): Correction {
  const found = `"${text}"`;
  const impossible = impossibleDay(text);
  if (impossible) return { found: `${found} (${impossible.why})`, write: impossible.write };
  for (const form of candidates(text)) if (read(form)) return { found, write: `"${form}"` };
  if (/\d\s*[/.]\s*\d|\d\d-\d\d/.test(text)) return { found, write: 'days in words, such as "1 October to 15 November"' };
  if (/\b(spring|summer|autumn|fall|winter|early|late|mid|month)\b/i.test(text)) {
    return { found, write: `the days, such as "1 April to 15 May", or a part of the hive's year, such as "in build-up": ${phaseList()}` };
  }
  const backwards = /^day (\d+) to day (\d+) after/.exec(text);
  if (backwards && Number(backwards[1]) > Number(backwards[2])) return { found, write: 'the earlier day first' };
  if (/^day \d/.test(text))
    return { found, write: `a day after one of: ${ownEvents.join(', ')}; such as "day 3 to day 5 after installing"` };
  if (/^in /.test(text)) return { found, write: `"in" and one of: ${phaseList()}` };
  if (/\b(before|after)\b/.test(text))
    return { found, write: `1 to 26 weeks, or days, before or after one of: ${anchorList()}; the earlier end first` };
  return { found, write: FORMS };
}

const phaseList = (): string => phases.map(phaseName).join(', ');
const anchorList = (): string => anchors.map(anchorName).join(', ');

/** 31 November and 29 February, with the day that the author may mean. */
function impossibleDay(text: string): { why: string; write: string } | null {
  for (const match of withMonthsFirst(text).matchAll(/\b(\d{1,2}) ([A-Z][a-z]+)\b/g)) {
    const [day, month] = [Number(match[1]), monthNames.indexOf(match[2] as (typeof monthNames)[number]) + 1];
    if (month === 0 || (day >= 1 && day <= lastDay(month))) continue;
    if (month === 2 && day === 29) return { why: '29 February comes only every fourth year', write: '28 February or 1 March' };
    return { why: `${monthName(month)} has ${lastDay(month)} days`, write: `a day from 1 to ${lastDay(month)} ${monthName(month)}` };
  }
  return null;
}

/** Rewrites `Oct 1`, `October 1st`, `1st of oct.` as `1 October`. */
function withMonthsFirst(text: string): string {
  return monthNames.reduce((held, name) => {
    const word = `(?:${name}|${name.slice(0, 3)}${name === 'September' ? 't?' : ''})\\b\\.?`;
    return held
      .replace(new RegExp(`\\b(\\d{1,2})(?:st|nd|rd|th)?(?: of)? ${word}`, 'gi'), `$1 ${name}`)
      .replace(new RegExp(`\\b${word} (\\d{1,2})(?:st|nd|rd|th)?\\b`, 'gi'), `$1 ${name}`);
  }, text);
}

function* candidates(text: string): Generator<string> {
  const plain = text
    .trim()
    .replace(/\s+/g, ' ')
    .replace(/^(?:from|between) /i, '')
    .replace(/[.,;]$/, '');
  if (/^(always|anytime|any time|all year|all year round|whenever|any)$/i.test(plain)) yield 'any time';
  const spaced = withMonthsFirst(plain)
    .replace(/\s*(?:–|—|(?<=\w) - |(?<=\d)-(?=\d)| until | till | through | to )\s*/gi, ' to ')
    .replace(/^(.*) and (.*)$/, /^between /i.test(text.trim()) ? '$1 to $2' : '$&');
  const form = sharedMonth(spaced)
    .replace(/\b(?!January|February|March|April|May|June|July|August|September|October|November|December)[A-Z][a-z-]*/g, (word) =>
      word.toLowerCase(),
    )
    .replace(new RegExp(`\\b(${COUNTS.join('|')})(?= (?:days?|weeks?)\\b)`, 'g'), (word) => String(COUNTS.indexOf(word) + 1))
    .replace(
      /\b(\d+) (day|week)s? (before|after)\b/g,
      (_, count: string, unit: string, side: string) => `${count} ${unit}${count === '1' ? '' : 's'} ${side}`,
    )
    .replace(/\b(before|after|in|to|of) the /g, '$1 ')
    .replace(/\b(first|last) frost\b/g, '$1 freeze')
    .replace(/^the /, '')
    .replace(/\b(?:the )?(?:start|beginning) of (?:the )?/g, '')
    .replace(/\b(winter|main|fall)-(rest|flow|preparation)\b/g, '$1 $2')
    .replace(/\bbuild up\b/g, 'build-up')
    .replace(/\bduring /g, 'in ')
    .replace(/\bdays? (\d+) (?:to|and) (?:day )?(\d+)/g, 'day $1 to day $2')
    .replace(/\bday 0+(\d)/g, 'day $1')
    .replace(/\b0(\d) (?=[A-Z])/g, '$1 ')
    .replace(/\bafter (?:install|installation)$/, 'after installing')
    .replace(/\bafter hive$/, 'after hiving')
    .replace(/\bafter (?:treatment|treat)$/, 'after treating');
  yield form;
  yield `in ${form}`;
  const alone = /^(\d+ (?:days?|weeks?)) (before|after) ([a-z -]+)$/.exec(form);
  if (alone) yield alone[2] === 'before' ? `${form} to ${alone[3]}` : `${alone[3]} to ${form}`;
  yield* spelledAnew(form);
  const months = /^(?:in )?([A-Z][a-z]+)(?: to ([A-Z][a-z]+))?$/.exec(form);
  if (months)
    yield `1 ${months[1]} to ${lastDay(monthNames.indexOf((months[2] ?? months[1]) as (typeof monthNames)[number]) + 1)} ${months[2] ?? months[1]}`;
}

/** `1 to 15 October`. */
const sharedMonth = (text: string): string => text.replace(/^(\d{1,2}) to (\d{1,2} ([A-Z][a-z]+))$/, '$1 $3 to $2');

/** A phase with one letter wrong, missing, doubled or swapped. */
function* spelledAnew(form: string): Generator<string> {
  const typed = /(?:^in |before |after |^)([a-z][a-z -]{4,})$/.exec(form)?.[1];
  if (!typed) return;
  const near = anchors.map(anchorName).find((name) => Math.abs(name.length - typed.length) <= 1 && oneSlip(name, typed));
  if (near) yield form.slice(0, form.length - typed.length) + near;
}

function oneSlip(name: string, typed: string): boolean {
  let start = 0;
  while (start < name.length && name[start] === typed[start]) start += 1;
  let end = 0;
  while (end < Math.min(name.length, typed.length) - start && name.at(-1 - end) === typed.at(-1 - end)) end += 1;
  const [left, right] = [name.slice(start, name.length - end), typed.slice(start, typed.length - end)];
  return (left.length <= 1 && right.length <= 1) || (left.length === 2 && right === left[1]! + left[0]!);
}
