/* Whose claim an entry is: that of a book's editors, of the club, or of both. The collection `origins` holds one for each entry of a club that stands on books. */
import type { Day } from '../../shared/days/day.ts';

export type Origin = {
  /** The book that the entry comes from; null for the club's own. */
  book: { id: string; title: string; editors: string; mistakes: string | null } | null;
  /** The club wrote it in the place of a book's entry. */
  isWrittenOver: boolean;
  /** The club added words of its own, or chose another row. */
  isAddedTo: boolean;
  /** The club compared the book's text itself, and it has not changed since. */
  compared: { day: Day; by: string } | null;
};
