export const heads = ['We say', 'We mean'];
export const rows = [
  ['settled', 'sources agree, and one was opened and read'],
  ['likely', 'one good source, opened and read'],
  ['sources disagree', 'both sides stand side by side; the club says which it follows'],
  ['common practice, no source', 'beekeepers do it; nobody measured it, or we found no paper'],
  ['from memory', 'written down without opening the source: do not rely on it'],
] as const;
