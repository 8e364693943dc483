export const title = 'How this almanac is reviewed';
export const lead = (edition: string, club: string, place: string): string => `Edition of ${edition}, published by ${club}, ${place}.`;
export const whoWrote = 'Who wrote these pages';
export const sharedBooks =
  'Many clubs share a book. Its editors checked each page on the day that the page names. A page that we compared with its sources ourselves says that too.';
export const howSure = 'How sure a figure is';
export const whereDates = 'Where dates come from';
export const howDates =
  'A day from members’ dates is the middle one of three years or more; likely are the days between the earliest and the latest of those years, at least ten days either way below five years. A day from monthly normals is that of a normal year.';
export const pastCheck = 'Pages past their next check';
export const noneDue = 'None on the day of this edition.';
export const wasDue = (day: string, by: string): string => `{page}: was due ${day} (${by})`;
export const mistake = 'A mistake?';
export const writeTo = (address: string): string =>
  `Write to [${address}](mail). Say which page, what it says, and what you found instead.`;
export const book = 'The book';
export const bookIs = 'All pages of this edition in one file, to keep, lend or print. It does not change when the pages do.';
export const onYourDevice = 'What stays on your device';
export const nothingSent =
  'Ticks, your district and the form of the page stay in this browser. Nothing is sent anywhere; there are no cookies and no counters.';
export const offlineCopy =
  'After one visit the whole almanac is available offline on this device. The foot of each page says when it is. With signal you always read the newest edition. Without, the page says so, names the edition, and says when its day is more than 60 days ago. A correction that you have read stays, even if the rest of its edition did not arrive. Clearing this site’s data in the browser takes the copy away.';
export const terms = 'Programs and letters that others made, and their terms: [licenses.txt](file).';
export const feed = 'What is new, for programs that follow it: [changes.xml](file).';
