/** A short print of words: the same words give the same print, whatever the spaces between them (FNV-1a, 32 bits, as base 36). */
export function printOf(words: string): string {
  let hash = 0x811c9dc5;
  for (const letter of words.replace(/\s+/g, ' ').trim()) hash = Math.imul(hash ^ letter.codePointAt(0)!, 0x01000193);
  return (hash >>> 0).toString(36);
}
