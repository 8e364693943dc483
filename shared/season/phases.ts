/**
 * The six parts of a hive's year, in the order they follow one another, and the days in it that a `when` may be counted from: the
 * starts of the parts, and the anchors of the year.
 */
import { anchorRules } from './anchors.ts';

export const phases = ['winter-rest', 'build-up', 'swarming', 'main-flow', 'dearth', 'fall-preparation'] as const;
export type Phase = (typeof phases)[number];

/** The start of main flow is said by the name of that part. */
const counted = anchorRules.filter(({ id }) => id !== 'main-flow-start');

export const anchors: readonly string[] = [...phases, ...counted.map(({ id }) => id)];

/** What the reader may have installed, caged, treated, hived or split: day 0 is that day. */
export const ownEvents = ['installing', 'caging', 'treating', 'hiving', 'splitting'] as const;

/** As it is written in a sentence: `main flow`, `build-up`. */
export const phaseName = (id: string): string => (id === 'build-up' ? id : id.replaceAll('-', ' '));

/** As it is written in a `when`: `main flow`, `first freeze`, `end of brood`. */
export const anchorName = (id: string): string => anchorRules.find((rule) => rule.id === id)?.words ?? phaseName(id);
