/*
 * Copies figures, their sources and cautions into a new club from another folder. Facts come with their sources. The other club's own
 * statements do not, so each entry must be compared and dated again.
 */
import { parseDocument, type Document, type Scalar } from 'yaml';
import type { Entry, Folder } from '../../source/folder.ts';
import type { File } from './draft.ts';

/** Fields of figures and cautions that belong to the other club: its checks, dates, contacts and pages. */
const OWN = ['history', 'formerly', 'withdrawn', 'draft', 'ask', 'more'];
const BY = 'almanac editor';

/** Emergency numbers, for a club that wants them. */
const LINES = ['fcc-911', 'hrsa-poison-help'];

/** Figures and cautions with `checked` blank, and every source that they name. */
export function copied(folder: Folder): File[] {
  const of = (collection: string): Entry[] => folder.entries.filter((entry) => entry.collection === collection && !isAway(entry));
  const taken = [...of('figures'), ...of('cautions')];
  const named = new Set([...taken.flatMap(sourcesOf), ...LINES]);
  return [
    ...taken.map(unchecked),
    ...of('sources')
      .filter(({ id }) => named.has(id))
      .map(source),
  ];
}

const isAway = ({ fields }: Entry): boolean => {
  const value = fields.value as { draft?: unknown; withdrawn?: unknown } | undefined;
  return value === undefined || value.draft === true || value.withdrawn !== undefined;
};

function sourcesOf({ fields }: Entry): string[] {
  const { rows = [], sources = [] } = fields.value as { rows?: { source: string }[]; sources?: string[] };
  return [...sources, ...rows.map((row) => row.source)];
}

/** The entry without what a higher folder changed of it: the text of a changed one is no document. */
const whole = (entry: Entry): Entry => (entry.overlays && entry.overlays.length > 0 && entry.over ? whole(entry.over) : entry);

/** In the new club's folder: without the book. */
const pathOf = ({ collection, id }: Entry): string => `${collection}/${id}.yaml`;

function unchecked(entry: Entry): File {
  const { text } = whole(entry);
  const document = parseDocument(text, { schema: 'core' });
  for (const field of OWN) document.delete(field);
  const because = document.get('because');
  if (because !== undefined)
    blank(
      document,
      'because',
      ` The club it comes from says: ${String(because)}\n Write why your club follows that row, or follow another.`,
    );
  blank(document, 'checked', ' Compare this with its sources, then write the day.');
  blank(document, 'next-check', ' And the day by which it is to be compared again, at most a year later.');
  document.set('by', BY);
  return { path: pathOf(entry), text: document.toString({ lineWidth: 0, nullStr: '' }).replace(/^([\w-]+:) +$/gm, '$1') };
}

function blank(document: Document, field: string, remark: string): void {
  document.set(field, null);
  const pair = (document.contents as unknown as { items: { key: Scalar }[] }).items.find(({ key }) => key.value === field)!;
  pair.key.commentBefore = remark;
}

/** Nobody in the new club has opened it yet. */
function source(entry: Entry): File {
  const { text } = whole(entry);
  const document = parseDocument(text, { schema: 'core' });
  document.delete('opened');
  return { path: pathOf(entry), text: document.toString({ lineWidth: 0 }) };
}
