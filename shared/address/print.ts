/** A short hash of words (FNV-1a, 32 bits, in base 36). Spaces between the words make no difference. */
export function printOf(words: string): string {
  let hash = 0x811c9dc5;
  for (const letter of words.replace(/\s+/g, ' ').trim()) hash = Math.imul(hash ^ letter.codePointAt(0)!, 0x01000193);
  return (hash >>> 0).toString(36);
}
