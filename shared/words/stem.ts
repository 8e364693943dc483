/*
 * Stemming: removes a word's ending, so that "feeding", "feeds" and "fed" in a query match "feed" on a page. It is light on purpose. It
 * only has to treat both sides alike, and the words it joins must mean the same.
 */

/** Past forms without a regular ending. */
const IRREGULAR = new Map(
  Object.entries({
    fed: 'feed',
    died: 'die',
    dead: 'die',
    dying: 'die',
    dies: 'die',
    left: 'leave',
    leaves: 'leave',
    leaving: 'leave',
    found: 'find',
    laid: 'lay',
    kept: 'keep',
    bought: 'buy',
    sold: 'sell',
    caught: 'catch',
    fought: 'fight',
    froze: 'freeze',
    frozen: 'freeze',
    stung: 'sting',
    flew: 'fly',
    flown: 'fly',
    mice: 'mouse',
    larvae: 'larva',
    pupae: 'pupa',
    wolves: 'wolf',
    knives: 'knife',
    children: 'child',
    built: 'build',
    ate: 'eat',
    eaten: 'eat',
    gave: 'give',
    given: 'give',
    took: 'take',
    taken: 'take',
    broke: 'break',
    broken: 'break',
  }),
);

/** Short forms of everyday words. */
const SHORT = new Map(
  Object.entries({
    kid: 'child',
    kids: 'child',
    doc: 'doctor',
    vet: 'veterinarian',
    vets: 'veterinarian',
    photo: 'photograph',
    photos: 'photograph',
    pic: 'photograph',
    pics: 'photograph',
    picture: 'photograph',
    pictures: 'photograph',
    fridge: 'refrigerator',
  }),
);

export const stem = (word: string): string => stemEnding(everyday(word));

/** The everyday form of a short or irregular word, in US spelling. */
export function everyday(written: string): string {
  const word = american(written);
  return SHORT.get(word) ?? IRREGULAR.get(word) ?? word;
}

function stemEnding(word: string): string {
  let left = word;
  if (left.length > 3 && /[^su]s$/.test(left))
    left = left
      .replace(/ies$/, 'y')
      .replace(/(ss|x|z|ch|sh|o)es$/, '$1')
      .replace(/([^s])s$/, '$1');
  if (left.length > 4 && /(?:ing|ed)$/.test(left) && /[aeiouy].*(?:ing|ed)$/.test(left) && !/eed$/.test(left))
    left = undoubled(left.replace(/(?:ing|ed)$/, ''));
  if (left.length > 3 && left.endsWith('e')) left = left.slice(0, -1);
  if (left.length > 3 && /[^aeiou]y$/.test(left)) left = `${left.slice(0, -1)}i`;
  return left;
}

const undoubled = (word: string): string => (/([bdfgmnprt])\1$/.test(word) ? word.slice(0, -1) : word);

/** Converts to US spelling. */
const american = (word: string): string =>
  word
    .replace(/^((?:dis)?col|neighb|fav|behavi|od|vap|harb|lab|hum|flav|vig)our/, '$1or')
    .replace(/^mould/, 'mold')
    .replace(/^grey/, 'gray')
    .replace(/^(lit|met|cent|fib)re(s?)$/, '$1er$2')
    .replace(/^sulph/, 'sulf');
