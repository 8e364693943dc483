/** The six phases of a hive's year in order, and the days that a `when` may be counted from: starts of phases and anchors. */
import { anchorRules } from './anchors.ts';

export const phases = ['winter-rest', 'build-up', 'swarming', 'main-flow', 'dearth', 'fall-preparation'] as const;
export type Phase = (typeof phases)[number];

/** The start of main flow is written with the name of that phase. */
const counted = anchorRules.filter(({ id }) => id !== 'main-flow-start');

export const anchors: readonly string[] = [...phases, ...counted.map(({ id }) => id)];

/** Events of the reader's own: installed, caged, treated, hived, split or requeened. Day 0 is that day. */
export const ownEvents = ['installing', 'caging', 'treating', 'hiving', 'splitting', 'requeening'] as const;

/** The form inside a sentence: `main flow`, `build-up`. */
export const phaseName = (id: string): string => (id === 'build-up' ? id : id.replaceAll('-', ' '));

/** The form inside a `when`: `main flow`, `first freeze`, `end of brood`. */
export const anchorName = (id: string): string => anchorRules.find((rule) => rule.id === id)?.words ?? phaseName(id);
