/* Finds the row of a figure that is in force on a day, and formats its source note. */
import { spoken } from '../../shared/country/language-here.ts';
import { formatDay } from './country.ts';
import * as en from './figures.en.ts';
import * as es from './figures.es.ts';
import { followedRows, UNITS, type Figure, type FigureRow } from '../schemas/figures.ts';
import type { Source } from '../schemas/sources.ts';
import type { InTongue } from './almanac.ts';
import type { Tongue } from '../../shared/country/language.ts';

export { UNITS };
export type { Figure, FigureRow };

/** The row of one source in force on a day. Null means "no figure": the nearest row is never used instead. */
export function rowOn(figure: Figure, rowId: string, day: string): FigureRow | null {
  const inForce = figure.rows.filter((row) => row.id === rowId && row.from <= day && (row.until === undefined || day <= row.until));
  return inForce.sort((a, b) => (a.from < b.from ? 1 : -1))[0] ?? null;
}

/** All rows in force on a day, the followed ones first. */
export function rowsOn(figure: Figure, day: string): FigureRow[] {
  const ids = [...new Set([...followedRows(figure), ...figure.rows.map((row) => row.id)])];
  return ids.flatMap((id) => rowOn(figure, id, day) ?? []);
}

/** What the program says of an entry, in the language of its words. */
const text = (lang?: Tongue) => (lang === 'es' ? es : spoken({ en, es }));

/** "University of Delaware 2012, extension leaflet. Mid-Atlantic. Likely." */
export function sourceWords(source: InTongue<Source>): string {
  if (source.kind === 'habit') return source.who;
  return (
    [`${source.who}${source.year ? ` ${source.year}` : ''}`, source.title, source.publisher, source.where, source.page]
      .filter(Boolean)
      .join(', ') + (source.seen === 'quoted' || source.seen === 'memory' ? text(source.lang).seen[source.seen] : '')
  );
}

/** A source for a reader: its words, and where it can be opened. `isHidden`: a publication that has no open address here. */
export type Cited = { words: string; url?: string; opened?: string; isHidden?: true; lang?: Tongue };

const NOT_PUBLISHED: readonly Source['kind'][] = ['habit', 'club'];

export const cited = (source: InTongue<Source>): Cited => ({
  words: sourceWords(source),
  ...(source.lang && { lang: source.lang }),
  ...(source.url && { url: source.url }),
  ...(source.url && source.opened && { opened: formatDay(source.opened) }),
  ...(!source.url && !NOT_PUBLISHED.includes(source.kind) && { isHidden: true as const }),
});

/** The note under a figure: author, place, method, first day, certainty, and check-by date. */
export function figureNote(figure: InTongue<Figure>, row: FigureRow, source: Source | undefined): string {
  const said = text(figure.lang);
  const parts = [
    source ? sourceWords(source) : row.source,
    [row.place, row.method].filter(Boolean).join('; '),
    row.note,
    source?.kind === 'habit' ? '' : sentenceCase(said.sureness[row.certainty]),
    said.checked(formatDay(figure.checked, figure.lang)),
  ];
  return parts
    .filter((part): part is string => Boolean(part))
    .map((part) => (/[.!?]$/.test(part) ? part : `${part}.`))
    .join(' ');
}

export const sureness = (certainty: FigureRow['certainty']): string => text().sureness[certainty];
const sentenceCase = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
