/* Shows the next meeting in the club's own time zone, decided when the page is read. Past ones stay, marked. */

/** `line` is the element that shows it. */
export function showMeetings(line: HTMLElement, today: string): void {
  const rows = [...document.querySelectorAll<HTMLElement>('[data-meeting-day]')];
  const next = rows.find((row) => row.dataset.meetingDay! >= today);
  for (const row of rows) if (row.dataset.meetingDay! < today) row.querySelector('.when')?.prepend('Past: ');
  line.hidden = false;
  line.textContent = next
    ? `Next: ${next.querySelector('a')!.textContent}, ${next.querySelector('time')!.textContent}.`
    : 'No further meeting is set in this edition. Ask the club.';
}
