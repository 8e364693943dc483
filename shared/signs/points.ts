/**
 * The points by which signs speak for a trouble or against it. They are a convention of this almanac, made to be worked by hand; they
 * are no chances, and were not fitted to cases. Whoever changes one changes the table on the page of signs with it: it is drawn from here.
 *
 * A sign that is there adds strength times how often it shows in that trouble; one that never shows there takes away as much as one
 * that always does would add. A sign that was looked for and is not there takes away by how often it shows, however strong it is.
 * A sign that is there and that the trouble does not list takes away 1; so do 2 where the part of the year is not the trouble's own.
 */
export type Strength = 'strong' | 'fair' | 'weak';
export type Shows = 'always' | 'often' | 'sometimes' | 'seldom' | 'never';

export const strengthPoints: Readonly<Record<Strength, number>> = { strong: 3, fair: 2, weak: 1 };
export const showsTimes: Readonly<Record<Shows, number>> = { always: 4, often: 3, sometimes: 2, seldom: 1, never: -4 };
export const missingPoints: Readonly<Record<Shows, number>> = { always: -6, often: -3, sometimes: -1, seldom: 0, never: 0 };
export const unlistedPoints = -1;
export const outOfSeasonPoints = -2;

/** What a sign that is there adds, or takes away where it never shows. */
export const therePoints = ({ strength, shows }: { readonly strength: Strength; readonly shows: Shows }): number =>
  strengthPoints[strength] * showsTimes[shows];
