/*
 * Short name of a source for the foot of a printed page: who published it, and the year. The page itself has it in full, with its number
 * and what it says.
 */
const NEAR = 120;

/** "Visscher, Vetter and Camazine 1996, Removing bee stings, …" gives "Visscher, Vetter and Camazine 1996". */
export function shortSource(words: string): string {
  const [sentence = ''] = words.split(/\. (?=[A-Z])/);
  const dated = /^.*?\b(?:1[89]|20)\d\d(?=[,.]|$)/.exec(sentence)?.[0];
  if (dated && dated.length <= NEAR) return dated;
  // The first comma that is not inside brackets.
  return (/^(?:\([^)]*\)|[^,(])+/.exec(sentence)?.[0] ?? sentence).trim();
}

export const shortSources = (all: readonly string[]): string[] => [...new Set(all.map(shortSource).filter((each) => each !== ''))];
