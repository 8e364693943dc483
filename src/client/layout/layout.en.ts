/** After the day of the next check. */
export const past = ': past. Ask before you rely on this page.';
/** The next meeting. */
export const next = (title: string, time: string): string => `Next: ${title}, ${time}.`;
export const noMeeting = 'No further meeting is set in this edition. Ask the club.';
