/**
 * The six parts of a hive's year, in the order they follow one another, and the days in it that a `when` may be
 * counted from. Anchors are the starts of the parts; a day that is observed (a plant in bloom) may join them.
 */
export const phases = ['winter-rest', 'build-up', 'swarming', 'main-flow', 'dearth', 'fall-preparation'] as const;
export type Phase = (typeof phases)[number];

export const anchors: readonly string[] = phases;

/** What the reader may have installed, caged, treated or hived: day 0 is that day. */
export const ownEvents = ['installing', 'caging', 'treating', 'hiving'] as const;

/** As it is written in a sentence: `main flow`, `build-up`. */
export const phaseName = (id: string): string => (id === 'build-up' ? id : id.replaceAll('-', ' '));
