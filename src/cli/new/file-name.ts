/* From a title to a file's name: lower-case letters of ASCII and digits, joined by hyphens, as every host can serve. */

/** Letters that do not come apart into a plain one and its accent. */
const PLAIN: Record<string, string> = { ß: 'ss', æ: 'ae', œ: 'oe', ø: 'o', ł: 'l', đ: 'd', ð: 'd', þ: 'th', ħ: 'h', ı: 'i' };

/** As long as check allows, with room for a day before it. */
const LONGEST = 48;

/** Whole words while they fit; null where a title has no letter that can stand in an address. */
export function nameFor(title: string): string | null {
  const words = title
    .toLowerCase()
    .replace(/[ßæœøłđðþħı]/g, (letter) => PLAIN[letter]!)
    .normalize('NFKD')
    .replace(/\p{M}|['’`]/gu, '')
    .split(/[^a-z0-9]+/)
    .filter(Boolean);
  let name = (words[0] ?? '').slice(0, LONGEST);
  for (const word of words.slice(1)) {
    if (name.length + 1 + word.length > LONGEST) break;
    name += `-${word}`;
  }
  return name || null;
}
