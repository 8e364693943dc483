/* Saves a text as a file of the reader's. */
export function download(name: string, type: string, text: string): void {
  const link = Object.assign(document.createElement('a'), { href: URL.createObjectURL(new Blob([text], { type })), download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}

/** A file name in words: "The first six weeks, Hive 1" gives `the-first-six-weeks-hive-1`. */
export const fileWords = (words: string): string =>
  words
    .normalize('NFKD')
    .replace(/\p{M}|['’]/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '') || 'checklist';
