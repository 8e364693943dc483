/*
 * The figures as a CSV file for other programs: the same rows and edition as the pages. Drafts and withdrawn entries are left
 * out, because the file is made from the same queries.
 */
import { csvText, type Cell } from '../../shared/csv.ts';
import type { Day } from '../../shared/days/day.ts';
import type { Almanac } from './content.ts';
import { figureShelves } from './figure-shelf.ts';

const COLUMNS = [
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
  'holds_in',
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
  'source_publisher',
  'source_page',
  'source_url',
  'source_opened',
  'source_kind',
  'source_seen',
  'checked',
  'next_check',
  'edition',
] as const;

/** One line for each row of a figure, also of those that hold elsewhere, with the unit and the source in columns of their own (RFC 4180). */
export function figuresTable(almanac: Almanac, day: Day): string {
  const lines = figureShelves(almanac, day).flatMap(({ subject, figures }) =>
    figures.flatMap(({ id, figure, rows, elsewhere }) =>
      [...rows, ...elsewhere].map(({ row, isFollowed }) => {
        const source = almanac.sources.get(row.source)!;
        const cells: Record<(typeof COLUMNS)[number], Cell> = {
          figure: id,
          title: figure.title,
          subject,
          row: row.id,
          followed: isFollowed ? 'yes' : 'no',
          value: row.value,
          least: row.least,
          most: row.most,
          unit: figure.unit,
          place: row.place,
          holds_in: [row.for ?? 'anywhere'].flat().join(' '),
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
          source_publisher: source.publisher,
          source_page: source.page,
          source_url: source.url,
          source_opened: source.opened,
          source_kind: source.kind,
          source_seen: source.seen,
          checked: figure.checked,
          next_check: figure['next-check'],
          edition: day,
        };
        return COLUMNS.map((name) => cells[name]);
      }),
    ),
  );
  return csvText([COLUMNS, ...lines]);
}
