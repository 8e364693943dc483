/* Messages of the service worker about the offline copy, in sentences that a page shows unchanged. */
import { daysBetween } from '../../shared/days/day.ts';
import { todayIn } from '../../shared/days/today.ts';
import { copy } from './cache.ts';

export type WorkerMessage = {
  says: string;
  /** Shown above the text, because it matters to the current reader. */
  first?: boolean;
  /** The text of a button that loads the page again. */
  press?: string;
};

/** Past this age of the edition, a reader without signal gets a message. Common practice, no source. */
const OLD_DAYS = 60;

export const saving = (done: number, all: number): WorkerMessage => ({
  says: `Saving for offline use: ${done} of ${all} files.`,
});
export const saved = (picturesLeft = 0): WorkerMessage => ({
  says: `Available offline: all ${copy.pages} pages, search and calendars, ${copy.size}, edition of ${copy.name}.${picturesLeft > 0 ? ` ${picturesLeft} of ${copy.pictures.length} pictures are not saved; their words are.` : ''}`,
});
export const notSaved = (): WorkerMessage => ({
  says: 'The offline copy is not complete. A file did not arrive as it should, or this device has no room. The next visit goes on from here.',
});
export const newEdition = (): WorkerMessage => ({
  says: `A new edition, of ${copy.name}, is saved on this device. This page is of another one.`,
  first: true,
  press: 'Show it',
});

/** `edition` is the page's. */
export function withoutSignal(edition: string, now: Date): WorkerMessage {
  const age = daysBetween(copy.day, todayIn(copy.zone, now));
  const old = age > OLD_DAYS ? ` It is more than ${OLD_DAYS} days old: ask before you rely on a number.` : '';
  const what =
    edition === copy.edition
      ? `this is the saved edition of ${copy.name}`
      : `this page is as you last saw it, newer than the saved edition of ${copy.name}`;
  return { says: `No signal: ${what}.${old}`, first: true };
}
