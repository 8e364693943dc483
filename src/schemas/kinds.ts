/* The names of the collections: the folders that a content folder holds. */
export const KINDS = [
  'checklists',
  'bulletins',
  'articles',
  'meetings',
  'reading',
  'treatments',
  'forage',
  'words',
  'figures',
  'sources',
  'cautions',
  'signs',
  'notices',
  'counts',
  'drawings',
] as const;
