/*
 * The almanac as files for other programs: the same entries, rows and edition as the pages, drafts and withdrawn ones left
 * out by the same shelves. Whom to ask is named by duty; no number, name or address of a person is in them.
 */
import { followedRows } from '../schemas/figures.ts';
import type { OpenAbout, OpenEntry } from '../schemas/open.ts';
import type { Almanac, Item } from './content.ts';
import { figurePlace, figureShelves, type ShelvedRow } from './figure-shelf.ts';

type Edition = { day: string; fingerprint: string };

export const aboutOpen = ({ club }: Almanac, { day, fingerprint }: Edition): OpenAbout => ({
  club: club.name,
  place: club.place,
  demonstration: club.demonstration,
  edition: day,
  fingerprint,
  reads: 'The label, the inspector, the extension service and a doctor decide. Give the source and the edition with every number.',
});

/** Fields as written, without what only the shelf needs. */
function bare<T extends { draft?: unknown; formerly?: unknown; withdrawn?: unknown }>(
  data: T,
): Omit<T, 'draft' | 'formerly' | 'withdrawn'> {
  const { draft: _draft, formerly: _formerly, withdrawn: _withdrawn, ...fields } = data;
  return fields;
}

/** `partsOf` draws the words of a bulletin, a heading at a time. */
export const openBulletins = (
  almanac: Almanac,
  partsOf: (item: Item<Almanac['bulletins'][number]['data']>) => { heading: string; words: string }[],
): OpenEntry<'bulletins'>[] =>
  almanac.bulletins.map((item) => {
    const { signs, 'looks-like': alike, sources, ...fields } = bare(item.data);
    return {
      id: item.id,
      address: `/pests/${item.id}/`,
      ...fields,
      // What was withdrawn is not named here either.
      ...(signs && { signs: signs.filter(({ sign }) => almanac.signs.some(({ id }) => id === sign)) }),
      ...(alike && { 'looks-like': alike.filter((other) => almanac.bulletins.some(({ id }) => id === other)) }),
      sources: sources.filter((id) => almanac.sources.has(id)),
      parts: partsOf(item),
    };
  });

export const openFigures = (almanac: Almanac): OpenEntry<'figures'>[] =>
  [...almanac.figures].map(([id, figure]) => ({
    id,
    address: `/${figurePlace(almanac, id)}`,
    ...bare(figure),
    rows: figure.rows.map(({ source, ...row }) => ({
      ...row,
      followed: followedRows(figure).includes(row.id),
      source: sourceOf(almanac, source),
    })),
  }));

function sourceOf({ sources }: Almanac, id: string): OpenEntry<'figures'>['rows'][number]['source'] {
  const { opened: _opened, withdrawn: _withdrawn, ...source } = sources.get(id)!;
  return { id, ...source };
}

export const openSigns = (almanac: Almanac): OpenEntry<'signs'>[] =>
  almanac.signs.map(({ id, data }) => ({
    id,
    address: `/signs/#${id}`,
    ...bare(data),
    in: almanac.bulletins.flatMap((item) =>
      (item.data.signs ?? []).filter(({ sign }) => sign === id).map(({ strength, shows }) => ({ bulletin: item.id, strength, shows })),
    ),
  }));

export const openTreatments = (almanac: Almanac): OpenEntry<'treatments'>[] =>
  almanac.treatments.map(({ id, data }) => {
    const { figures, sources, ...fields } = bare(data);
    return {
      id,
      address: `/treatments/${id}/`,
      ...fields,
      ...(figures && { figures: figures.filter((figure) => almanac.figures.has(figure)) }),
      sources: sources.filter((source) => almanac.sources.has(source)),
    };
  });
export const openForage = (almanac: Almanac): OpenEntry<'forage'>[] => almanac.forage.map(({ id, data }) => ({ id, ...bare(data) }));

export const FIGURE_COLUMNS = [
  'figure',
  'title',
  'subject',
  'row',
  'followed',
  'value',
  'least',
  'most',
  'unit',
  'place',
  'method',
  'phases',
  'from',
  'until',
  'certainty',
  'note',
  'source',
  'source_who',
  'source_title',
  'source_year',
  'source_where',
  'source_kind',
  'source_seen',
  'checked',
  'next_check',
  'edition',
] as const;

/** A line a row of a figure, its unit and source in columns of their own (RFC 4180). */
export function figuresTable(almanac: Almanac, { day }: Edition): string {
  const lines = figureShelves(almanac, day).flatMap(({ subject, figures }) =>
    figures.flatMap(({ id, figure, rows }) =>
      rows.map((shown) => {
        const { row } = shown;
        const source = almanac.sources.get(row.source)!;
        const cells: Record<(typeof FIGURE_COLUMNS)[number], unknown> = {
          figure: id,
          title: figure.title,
          subject,
          row: row.id,
          followed: followed(shown),
          value: row.value,
          least: row.least,
          most: row.most,
          unit: figure.unit,
          place: row.place,
          method: row.method,
          phases: row.phases?.join(' '),
          from: row.from,
          until: row.until,
          certainty: row.certainty,
          note: row.note,
          source: row.source,
          source_who: source.who,
          source_title: source.title,
          source_year: source.year,
          source_where: source.where,
          source_kind: source.kind,
          source_seen: source.seen,
          checked: figure.checked,
          next_check: figure['next-check'],
          edition: day,
        };
        return FIGURE_COLUMNS.map((name) => cell(cells[name])).join(',');
      }),
    ),
  );
  return [FIGURE_COLUMNS.join(','), ...lines, ''].join('\r\n');
}

const followed = ({ isFollowed }: ShelvedRow): string => (isFollowed ? 'yes' : 'no');

/** In quotes where a comma, a quote or a line end is in it. A first sign that a spreadsheet would take for a sum is kept as words by a blank before it. */
function cell(value: unknown): string {
  if (value === undefined) return '';
  const text = typeof value === 'string' && /^[=+@-]/.test(value) ? ` ${value}` : String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
