/* Form of the sticky board. Words: text.en.ts. Arithmetic: shared/mites. */
import { mitesFallenPerDay, type BoardReason } from '../../../shared/mites/sticky-board.ts';
import { defineCalculator, type Answer } from '../form/calculator.ts';
import { boxOf, type FormError } from '../form/field.ts';
import { count, number } from '../form/kind.ts';
import { put, show } from '../form/outputs.ts';
import { single } from '../form/single.ts';
import { dayFromToday } from '../form/today.ts';
import { inDays } from '../form/typed-units.ts';
import type { NextKind } from './next.ts';
import type { Board } from './model.ts';
import * as text from './text.en.ts';

defineCalculator<Board, Record<string, never>>('sticky-board', {
  fields: {
    mites: single(count(text.asked.mites)),
    days: single(number(text.asked.days, inDays)),
  },
  work: (board, { form, result }) => {
    const fallen = mitesFallenPerDay(board.mites, board.days);
    if (!fallen.ok) return [faultOf(fallen.reason, form)];
    put(result, 'per-day', text.perDayWords(fallen.value), fallen.value);
    show(result, 'sum', text.sumWords(board, fallen.value));
    return {
      headline: text.headline(fallen.value),
      asked: text.questionWords(board),
      next: {
        kind: 'counted',
        says: text.says,
        again: text.again(dayFromToday(Math.max(1, Math.round(board.days)))),
      },
    } satisfies Answer<NextKind>;
  },
});

const faultOf = (reason: BoardReason, form: HTMLFormElement): FormError => ({
  box: boxOf(form, reason === 'no-days' || reason === 'too-many' ? 'days' : 'mites'),
  words: text.faults[reason],
});
