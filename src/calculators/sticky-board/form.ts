/* Form of the sticky board. Sentences: text.ts. Arithmetic: shared/mites. */
import { mitesFallenPerDay, type BoardReason } from '../../../shared/mites/sticky-board.ts';
import { defineCalculator } from '../form/calculator.ts';
import { boxOf, type FormError } from '../form/field.ts';
import { count, number } from '../form/kind.ts';
import { put, show } from '../form/outputs.ts';
import { single } from '../form/single.ts';
import { inDays } from '../form/typed-units.ts';
import { headline, perDayWords, sumWords, type Board } from './text.ts';

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
    return headline(fallen.value);
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
