/* Notices stand at the head of a page from their first day to their last, decided when the page is read or looked at again. */
import type { Day } from '../../../shared/days/day.ts';
import { todayIn } from '../../../shared/days/today.ts';

/** Returns the day it is here. */
export function showNotices(): Day {
  const today = todayIn(document.documentElement.dataset.zone!, new Date());
  for (const notice of document.querySelectorAll<HTMLElement>('[data-notice]')) {
    const [from, until] = notice.dataset.notice!.split(' ');
    notice.hidden = today < from! || today > until!;
  }
  return today;
}
