/* The club's word list and the well-spelled words of its almanac, as the search needs them. */
export type Word = { id: string; /** The one that is shown, then all others. */ names: string[] };

/** As it is fetched: names of a word parted by semicolons; spelled words in order, each as the number of letters it shares with the one before, and the rest. */
export type WrittenLexicon = { words: Record<string, string>; spelled: string };

export type Lexicon = { words: Word[]; isAlias: (word: string) => boolean; /** The well-spelled word that a mistyped one was meant to be; null for one that is right, or far from all. */ meant: (word: string) => string | null };

const ENDINGS = ['', 's', 'es', 'ed', 'd', 'ing', 'ly', 'y', 'er', 'r'];

export function readLexicon({ words, spelled }: WrittenLexicon): Lexicon {
  const list = Object.entries(words).map(([id, names]) => ({ id, names: names.split(';').map((name) => name || id.replaceAll('-', ' ')) }));
  const right = new Set<string>();
  let before = '';
  for (const [, shared, rest] of spelled.matchAll(/(\d)([a-z]*)/g)) right.add((before = before.slice(0, Number(shared)) + rest!));
  for (const { names } of list) for (const part of partsOf(names[0]!)) right.add(part);
  const aliases = new Set(list.flatMap(({ names }) => names.slice(1).flatMap(partsOf)));
  const all = [...right];
  const isRight = (word: string): boolean => stemsOf(word).some((stem) => right.has(stem) || right.has(`${stem}e`)) || all.some((other) => other.startsWith(word));
  return {
    words: list,
    isAlias: (word) => aliases.has(word),
    meant: (word) => (isRight(word) ? null : nearestOf(word, all, aliases.has(word) ? ONE_VOWEL : farthest(word.length))),
  };
}

const ONE_VOWEL = 0.7;
const farthest = (letters: number): number => (letters < 4 ? 1.4 : letters < 6 ? 1.9 : letters < 9 ? 2.4 : 3.1);

const partsOf = (name: string): string[] => name.toLowerCase().match(/[a-z]{3,}/g) ?? [];
const stemsOf = (word: string): string[] => ENDINGS.filter((ending) => word.endsWith(ending) && word.length - ending.length > 2).map((ending) => word.slice(0, word.length - ending.length));

/** The well-spelled word that fewest slips lead to; null where all are far. */
function nearestOf(word: string, right: readonly string[], farthest: number): string | null {
  let best: string | null = null;
  let least = farthest;
  for (const stem of stemsOf(word)) {
    for (const other of right) {
      if (other.length < 3 || Math.abs(other.length - stem.length) > least) continue;
      const far = slips(stem, other) + (other[0] === stem[0] ? 0 : 0.4) + (stem === word ? 0 : 0.3);
      if (far < least) [best, least] = [other, far];
    }
  }
  return best;
}

/** Letters left out, put in or changed; a doubled letter and a changed vowel count less. */
function slips(a: string, b: string): number {
  let row = [...b, ''].map((_, at) => at);
  [...a].forEach((x, i) => {
    const next = [i + 1];
    [...b].forEach((y, j) => {
      const change = x === y ? 0 : VOWELS.includes(x) && VOWELS.includes(y) ? 0.6 : 1;
      next.push(Math.min(row[j + 1]! + (x === a[i - 1] ? 0.5 : 1), next[j]! + (y === b[j - 1] ? 0.5 : 1), row[j]! + change));
    });
    row = next;
  });
  return row.at(-1)!;
}

const VOWELS = 'aeiouy';
