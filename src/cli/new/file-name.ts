/* File name of a title: lower-case ASCII letters and digits, joined by hyphens, which every host can serve. */

/** Letters that do not decompose into a plain letter and an accent. */
const PLAIN: Record<string, string> = { ß: 'ss', æ: 'ae', œ: 'oe', ø: 'o', ł: 'l', đ: 'd', ð: 'd', þ: 'th', ħ: 'h', ı: 'i' };

/** The maximum length that check allows, less the length of a day before it. */
const LONGEST = 48;

/** Takes whole words while they fit. Null where a title has no letter that can be in an address. */
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
