/*
 * Name of an edition: its day and a short mark of its content, as in "April 18, 2026 (3f2a1c)". A correction often moves no day, and two
 * editions must be told apart by what their readers see.
 */
import type { Day } from '../../shared/days/day.ts';
import { formatDay } from './country.ts';

export type Edition = { day: Day; fingerprint: string };

/** Six characters of the fingerprint: two editions of one day share them once in some 17 million cases. */
export const editionMark = ({ fingerprint }: Pick<Edition, 'fingerprint'>): string => fingerprint.slice(0, 6);

/** Its parts stay on one line. */
export const editionName = (edition: Edition): string => `${formatDay(edition.day)}\u00a0(${editionMark(edition)})`;

/** The same for programs: `2026-04-18 3f2a1c`. */
export const editionId = (edition: Edition): string => `${edition.day} ${editionMark(edition)}`;
