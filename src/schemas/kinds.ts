/* Names of the collections, which are the folders of a content folder. */
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
