/* Sentences of the sticky board. */
import { formatNumber, toDataValue } from '../../../shared/numbers/show-number.ts';
import { three } from '../form/measures.ts';

export type Board = { readonly mites: number; readonly days: number };

export function perDayWords(perDay: number): string {
  const shown = three(perDay);
  return `${shown} ${shown === '1' ? 'mite' : 'mites'} a day`;
}

export function headline(perDay: number): string {
  return `${perDayWords(perDay)} fell on the board.`;
}

/** What was asked, in one line. */
export function questionWords({ mites, days }: Board): string {
  return `${formatNumber(mites, { places: 0 })} ${mites === 1 ? 'mite' : 'mites'} in ${toDataValue(Number(days.toPrecision(4)))} ${days === 1 ? 'day' : 'days'}`;
}

/** The calculation with its numbers. */
export function sumWords({ mites, days }: Board, perDay: number): string {
  return `${formatNumber(mites, { places: 0 })} ${mites === 1 ? 'mite' : 'mites'} ÷ ${toDataValue(Number(days.toPrecision(4)))} ${days === 1 ? 'day' : 'days'} = ${perDayWords(perDay)}.`;
}
