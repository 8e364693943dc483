/* Sets the pointer of the year's rings to a day, and marks its month. */
import { numbersOf } from '../../../shared/days/year-span.ts';
import { languageHere } from '../../../shared/country/language-here.ts';
import { shownMonth } from '../../../shared/days/month-names.ts';
import type { MonthDay } from '../../../shared/days/month-day.ts';

/** Days from one day to another, forward round a year of 365 days. */
export const daysBetween = (from: MonthDay, to: MonthDay): number =>
  ((Date.parse(`2001-${to}`) - Date.parse(`2001-${from}`)) / 864e5 + 365) % 365;

export function pointRings(now: MonthDay): void {
  const { month } = numbersOf(now);
  const degrees = (daysBetween('01-01' as MonthDay, now) / 365) * 360;
  for (const hand of document.querySelectorAll('[data-hand]')) {
    hand.removeAttribute('visibility');
    hand.setAttribute('transform', `rotate(${degrees.toFixed(1)} 200 200)`);
  }
  document.querySelector(`[data-month="${month}"]`)?.classList.add('now');
  for (const place of document.querySelectorAll('[data-ring-month]')) place.textContent = shownMonth(month, languageHere()).slice(0, 3);
}
