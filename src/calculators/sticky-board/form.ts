/* Form of the sticky board. Sentences: text.ts. Arithmetic: shared/mites. */
import { mitesFallenPerDay, type BoardReason } from '../../../shared/mites/sticky-board.ts';
import { defineCalculator, type Answer } from '../form/calculator.ts';
import { boxOf, type FormError } from '../form/field.ts';
import { count, number } from '../form/kind.ts';
import { put, show } from '../form/outputs.ts';
import { single } from '../form/single.ts';
import { dayFromToday } from '../form/today.ts';
import { inDays } from '../form/typed-units.ts';
import type { NextKind } from './next.ts';
import { headline, perDayWords, questionWords, sumWords, type Board } from './text.ts';

defineCalculator<Board, Record<string, never>>('sticky-board', {
  fields: {
    mites: single(count('how many mites lay on the board')),
    days: single(number('how many days it was in, such as 3', inDays)),
  },
  work: (board, { form, result }) => {
    const fallen = mitesFallenPerDay(board.mites, board.days);
    if (!fallen.ok) return [faultOf(fallen.reason, form)];
    put(result, 'per-day', perDayWords(fallen.value), fallen.value);
    show(result, 'sum', sumWords(board, fallen.value));
    return {
      headline: headline(fallen.value),
      asked: questionWords(board),
      next: {
        kind: 'counted',
        says: 'A board only shows a trend. Count mites per hundred bees before you decide.',
        again: `Next board: put it in today, for as long, and read it on ${dayFromToday(Math.max(1, Math.round(board.days)))}.`,
      },
    } satisfies Answer<NextKind>;
  },
});

function faultOf(reason: BoardReason, form: HTMLFormElement): FormError {
  const [name, says] = {
    'no-days': ['days', 'The days must be more than 0.'],
    'mites-not-whole': ['mites', 'Write whole mites.'],
    'mites-negative': ['mites', 'Mites cannot be under 0.'],
    'too-many': ['days', 'A board lies at most 366 days, and a million mites a day is no count.'],
  }[reason] as [string, string];
  return { box: boxOf(form, name), words: says };
}
