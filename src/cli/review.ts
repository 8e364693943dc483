/*
 * `npm run review`: lists by duty what is overdue or due for a check within 60 days, and the figures whose source nobody can
 * open. With --reading it says instead how hard the pages are to read. Without --on it reads the clock, in the club's own time zone. Of the other commands only withdraw does.
 */
import { todayIn } from '../../shared/days/today.ts';
import { validEntries } from '../checks/fields.ts';
import { readingLevels, readingLines } from '../checks/reading-level.ts';
import { dueLines, dueOn } from '../checks/review.ts';
import { unopenedLines } from '../checks/sources.ts';
import { languageOf, readFolder } from '../source/folder.ts';
import { argumentsOf } from './arguments.ts';

const { values } = argumentsOf('review');
const folder = readFolder(values.content);
const club = validEntries(folder);
if (club.club === null && values.on === undefined) {
  console.error(
    'There is no club.yaml here that says in which time zone the club lives. Run npm run check, or give a day: --on 2026-05-01.',
  );
  process.exit(1);
}
const on = values.on ?? todayIn(club.club!.data['time-zone'], new Date());
const isOurs = ({ path }: { path: string }): boolean => values.all || !folder.books.some(({ id }) => path.startsWith(`books/${id}/`));
if (values.reading) {
  console.log(readingLines(readingLevels({ entries: folder.entries.filter(isOurs) })).join('\n') || 'No page has enough words.');
  process.exit(0);
}
console.log(dueLines(dueOn(club, on).filter(isOurs), on, languageOf(folder)).join('\n'));
for (const line of unopenedLines(club)) console.log(line);
const read = Object.values(club.of).flat().length;
if (read < folder.entries.length)
  console.log(`${folder.entries.length - read} of ${folder.entries.length} files could not be listed; npm run check says why.`);
