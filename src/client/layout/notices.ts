/* What holds from a day to a day, a notice or a number given by consent, is shown on those days only, decided when the page is read or looked at again. */
import type { Day } from '../../../shared/days/day.ts';
import { todayIn } from '../../../shared/days/today.ts';
import { showNumbers } from './consent.ts';

/** Returns the day it is here. */
export function showNotices(): Day {
  const today = todayIn(document.documentElement.dataset.zone!, new Date());
  for (const notice of document.querySelectorAll<HTMLElement>('[data-holds]')) {
    const [from, until] = notice.dataset.holds!.split(' ');
    notice.hidden = today < from! || today > until!;
  }
  showNumbers(today);
  return today;
}
