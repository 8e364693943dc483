/* Shows the reader's own day on the page: each step's date and status, and the fields for how she started. */
import { isDay } from '../../../shared/days/day.ts';
import { formatDay } from '../../../shared/days/show-day.ts';
import { spanOf, spanWords } from './own-days.ts';
import type { Run } from './record.ts';
import { boxes, line, stepOf, today } from './checklist.ts';

const USUAL = ['candy', 'drawn'];

/** The text of a step's days before the reader gives one. */
const plain = new Map(boxes.map((box) => [box, stepOf(box).querySelector('.step-day')?.textContent ?? '']));

export function showDays(run: Run): void {
  for (const box of boxes) {
    const { days } = stepOf(box).dataset;
    if (!days) continue;
    const span = spanOf(days, run);
    line(stepOf(box), 'step-day', span ? spanWords(span, today, box.checked) : run.day ? 'not with this start' : plain.get(box));
  }
  for (const field of document.querySelectorAll<HTMLInputElement>('.own-day [data-own]')) {
    if (field.type === 'radio')
      field.checked = run.choices?.[field.name] === field.value || (!run.choices?.[field.name] && USUAL.includes(field.value));
    else if (field !== document.activeElement) field.value = run.day && isDay(run.day) ? formatDay(run.day) : '';
  }
}
