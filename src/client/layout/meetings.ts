/* Shows the next meeting in the club's own time zone, decided when the page is read. */
import * as text from './layout.en.ts';

/**
 * `line` is the element that shows it. On a page that shows the next meeting only, the others are hidden, but not one before it that is
 * called off. On the list, past ones move below the others, the last one first.
 */
export function showMeetings(line: HTMLElement, today: string): void {
  const rows = [...document.querySelectorAll<HTMLElement>('[data-meeting-day]')];
  const past = rows.filter((row) => row.dataset.meetingDay! < today);
  const ahead = rows.filter((row) => !past.includes(row));
  const next = ahead.find((row) => row.dataset.calledOff === undefined);
  const only = line.dataset.nextMeeting === 'only';
  if (only) for (const row of rows) row.hidden = past.includes(row) || (next !== undefined && ahead.indexOf(row) > ahead.indexOf(next));
  const below = document.querySelector<HTMLElement>('[data-past]');
  if (below && past.length > 0) {
    below.lastElementChild!.append(...past.reverse());
    below.hidden = false;
  }
  line.hidden = only && next !== undefined;
  line.textContent = next ? text.next(next.querySelector('a')!.textContent!, next.querySelector('time')!.textContent!) : text.noMeeting;
}
