/* Shows notices, and numbers given by consent, on their own days only, decided when the page is read or becomes visible. */
import type { Day } from '../../../shared/days/day.ts';
import { todayIn } from '../../../shared/days/today.ts';
import { showNumbers } from './consent.ts';

/** Returns the current day here. */
export function showNotices(): Day {
  const today = todayIn(document.documentElement.dataset.zone!, new Date());
  for (const notice of document.querySelectorAll<HTMLElement>('[data-holds]')) {
    const [from, until] = notice.dataset.holds!.split(' ');
    notice.hidden = today < from! || today > until!;
  }
  showNumbers(today);
  return today;
}
