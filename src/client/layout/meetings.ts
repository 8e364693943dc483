/* Shows the next meeting in the club's own time zone, decided when the page is read. */

/** `line` is the element that shows it. On a page that shows the next meeting only, the others are hidden. On the list, past ones stay, marked. */
export function showMeetings(line: HTMLElement, today: string): void {
  const rows = [...document.querySelectorAll<HTMLElement>('[data-meeting-day]')];
  const next = rows.find((row) => row.dataset.meetingDay! >= today);
  const only = line.dataset.nextMeeting === 'only';
  for (const row of rows) {
    if (only) row.hidden = row !== next;
    else if (row.dataset.meetingDay! < today) row.querySelector('.when')?.prepend('Past: ');
  }
  line.hidden = only && next !== undefined;
  line.textContent = next
    ? `Next: ${next.querySelector('a')!.textContent}, ${next.querySelector('time')!.textContent}.`
    : 'No further meeting is set in this edition. Ask the club.';
}
