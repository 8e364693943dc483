/**
 * The points by which signs count for or against a trouble. They are a convention of this almanac that works by hand; they are no
 * probabilities and were not fitted to cases. The table on the signs page is drawn from here, so a change here changes it.
 * A present sign adds strength times frequency in that trouble. If it never occurs there, it subtracts what a sign that always occurs
 * would add. A sign that was looked for and is absent subtracts by its frequency, whatever its strength. A present sign that the trouble
 * does not list subtracts 1. A part of the year that is not the trouble's own subtracts 2.
 */
export type Strength = 'strong' | 'fair' | 'weak';
export type Shows = 'always' | 'often' | 'sometimes' | 'seldom' | 'never';

export const strengthPoints: Readonly<Record<Strength, number>> = { strong: 3, fair: 2, weak: 1 };
export const showsTimes: Readonly<Record<Shows, number>> = { always: 4, often: 3, sometimes: 2, seldom: 1, never: -4 };
export const missingPoints: Readonly<Record<Shows, number>> = { always: -6, often: -3, sometimes: -1, seldom: 0, never: 0 };
export const unlistedPoints = -1;
export const outOfSeasonPoints = -2;

/** What a present sign adds, or subtracts where it never occurs. */
export const therePoints = ({ strength, shows }: { readonly strength: Strength; readonly shows: Shows }): number =>
  strengthPoints[strength] * showsTimes[shows];
