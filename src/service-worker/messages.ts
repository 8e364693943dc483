/* Messages of the service worker about the offline copy, in sentences that a page shows unchanged. */
import { daysBetween } from '../../shared/days/day.ts';
import { todayIn } from '../../shared/days/today.ts';
import { copy } from './cache.ts';
import * as text from './messages.en.ts';

export type WorkerMessage = {
  says: string;
  /** Shown above the text, because it matters to the current reader. */
  first?: boolean;
  /** The text of a button that loads the page again. */
  press?: string;
};

/** Past this age of the edition, a reader without signal gets a message. Common practice, no source. */
const OLD_DAYS = 60;

export const saving = (done: number, all: number): WorkerMessage => ({ says: text.saving(done, all) });
export const saved = (picturesLeft = 0): WorkerMessage => ({
  says: text.saved(copy.pages, copy.size, copy.name, picturesLeft, copy.pictures.length),
});
export const notSaved = (): WorkerMessage => ({ says: text.notSaved });
export const newEdition = (): WorkerMessage => ({ says: text.newEdition(copy.name), first: true, press: text.showIt });

/** `edition` is the page's. */
export function withoutSignal(edition: string, now: Date): WorkerMessage {
  const isOld = daysBetween(copy.day, todayIn(copy.zone, now)) > OLD_DAYS;
  const says = edition === copy.edition ? text.isSaved : text.isAsSeen;
  return { says: says(copy.name, isOld ? OLD_DAYS : undefined), first: true };
}
