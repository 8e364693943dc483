/* Sentences for the ranking of signs. They never say what it is, only what to check. */
import type { Candidate, Ranking } from '../../../shared/signs/rank.ts';

/** The announced line. `usual` is the number of ticked signs that are mostly harmless. */
export function headline({ outcome }: Ranking, titles: readonly string[], usual: number): string {
  if (outcome === 'nothing-picked') return '';
  if (outcome === 'no-match') return usual > 0 ? 'Mostly nothing, and nothing else in this list fits.' : 'Nothing in this list fits.';
  if (outcome === 'only-harmless') return `Only harmless things fit: ${titles.join(', ')}.`;
  return titles.length === 1 ? `Check for this: ${titles[0]}.` : `Check these ${titles.length}, this first: ${titles[0]}.`;
}

/** Signs for it, signs against it, and open ones. */
export function whyLines(
  { fits, against, open, outOfSeason }: Candidate,
  wordsOf: (sign: string) => string,
): [name: string, words: string][] {
  const missing = against.filter(({ why }) => why === 'not-there');
  const never = against.filter(({ why }) => why === 'never-shows');
  const speaks = [
    ...never.map(({ sign }) => `${wordsOf(sign)}, which never shows in it`),
    ...missing.map(({ sign }) => `not seen: ${wordsOf(sign)}`),
    ...(outOfSeason ? ['seldom in this part of the year'] : []),
  ];
  return [
    ['Fits', fits.map(({ sign, shows }) => `${wordsOf(sign)} (${shows})`).join('; ')],
    ...(speaks.length > 0 ? [['Does not fit', speaks.join('; ')] as [string, string]] : []),
    ...(open.length > 0 ? [['Not explained by it', open.map(wordsOf).join('; ')] as [string, string]] : []),
  ].map(([name, words]) => [name!, `${words}.`]);
}

/** A sign with what it usually is. */
export const usually = (sign: string, usual: string): string => `${sign}: ${usual}`;
export const lessLikely = (titles: readonly string[]): string => `Less likely: ${titles.join(', ')}.`;
export const ticked = (count: number): string => `${count} ticked`;
export const lookNext = 'Look for this next';
export const tellsAbout = (titles: readonly string[]): string => `It tells about: ${titles.join(', ')}`;
export const isThere = 'It is there';
export const isNotThere = 'It is not there';
export const takeBack = 'Take these back';
export const lookedFor = (signs: readonly string[]): string => `Looked for, not there: ${signs.join('; ')}. `;
