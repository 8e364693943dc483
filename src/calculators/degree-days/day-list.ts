/*
 * Form field for many days in one box, one line per day: the lowest temperature, then the highest, with a tab, comma, blank or `/` between
 * them. A date before them is skipped.
 */
import { readAddressNumber, readAddressRecords, writeAddressRecords } from '../../../shared/address/address-values.ts';
import { plainDecimal } from '../../../shared/numbers/show-number.ts';
import { readTypedNumber } from '../../../shared/numbers/typed-number.ts';
import { readTypedRows } from '../../../shared/numbers/typed-rows.ts';
import { ok, err, type Result } from '../../../shared/result.ts';
import type { DayTemperatures } from '../../../shared/season/degree-day.ts';
import { boxOf, type Field } from '../form/field.ts';
import { numberWords } from '../form/kind.ts';
import { boxNumber } from '../form/units.ts';
import * as words from './text.en.ts';

const mostDays = 366;
const pair = ([min, max]: readonly number[]): DayTemperatures => ({ min: min!, max: max! });

export function dayList(): Field<readonly DayTemperatures[]> {
  return {
    read: (form, name) => {
      const box = boxOf(form, name);
      const typed = box.value.trim();
      const read = readDays(typed);
      if (read.ok) return { value: read.value, address: read.value.length > 0 ? writeDays(read.value) : undefined };
      return {
        faults: [{ box, words: sayWrong(read.reason, read.row, read.text) }],
        address: readAddressDays(typed).ok ? undefined : typed,
      };
    },
    fill: (form, name, text) => {
      const box = boxOf(form, name);
      const read = readAddressDays(text);
      box.value = read.ok ? read.value.map(({ min, max }) => `${boxNumber(min)}/${boxNumber(max)}`).join('\n') : text;
      if (read.ok) return undefined;
      const typed = readDays(text.trim());
      return typed.ok
        ? {
            box,
            words: words.daysInAddress(typed.value.length > 0 ? writeDays(typed.value) : '40/54;43/63'),
          }
        : undefined;
    },
  };
}

function writeDays(days: readonly DayTemperatures[]): string {
  return writeAddressRecords(
    days.map(({ min, max }) => [plainDecimal(min), plainDecimal(max)]),
    ['/'],
  );
}

function readAddressDays(text: string): Result<readonly DayTemperatures[], string> {
  const records = readAddressRecords(text, ['/']);
  if (!records.ok) return records;
  const days = records.value.map((record) => record.map(readAddressNumber));
  if (days.length > mostDays || days.some((day) => day.some((each) => !each.ok))) return err('not-a-number');
  return ok(days.map((day) => pair(day.map((each) => (each.ok ? each.value : 0)))));
}

function readDays(typed: string): Result<readonly DayTemperatures[], string> {
  if (typed === '') return ok([]);
  // Days on one line, as the address has them.
  const text = /^(?=[^\n\t]*\/)[^\n\t]*;/.test(typed) ? typed.replaceAll(';', '\n') : typed;
  const lines = readTypedRows(text, { numbers: 2, whole: false, numberedNames: false });
  if (!lines.ok) return lines;
  if (lines.value.length > mostDays) return err('too-many', { text: String(lines.value.length) });
  const days: DayTemperatures[] = [];
  for (const [at, { numbers: cells }] of lines.value.entries()) {
    const numbers: number[] = [];
    for (const cell of cells) {
      const read = readTypedNumber(cell);
      if (!read.ok) return err(read.reason, { row: at + 1, text: cell });
      numbers.push(read.value);
    }
    days.push(pair(numbers));
  }
  return ok(days);
}

function sayWrong(reason: string, row = 1, text = ''): string {
  const shown = text.length > 40 ? `${text.slice(0, 40)}…` : text;
  if (reason === 'too-many') return words.tooManyDays(mostDays, text);
  if (reason === 'wrong-fields') return words.inLine(row, words.wrongLine(shown));
  return words.inLine(row, numberWords({ ok: false, reason, text }, text, words.asked.temperature));
}
