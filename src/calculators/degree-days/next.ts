/* Next steps of the degree-days: what is in bloom at which sum, and the flow. */
const links = [
  ['year/bloom/', 'know-how/the-flow/'],
  ['know-how/the-flow/', 'lists/flow-and-supers/', 'know-how/records/'],
];
const ask = ['extension', 'mentor'];

export const next = {
  'given-days': { links, ask },
  normals: { links, ask },
  'no-figure': { links: [['know-how/records/', 'know-how/the-flow/'], ['know-how/the-flow/']], ask },
} as const;

export type NextKind = keyof typeof next;
