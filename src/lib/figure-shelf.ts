/*
 * All figures by subject, with every row side by side: source, place, method, date, certainty, and which one the club follows. Each
 * figure has a fragment on its subject's page, which notes link to.
 */
import type { InTongue } from './almanac.ts';
import * as text from './figure-shelf.en.ts';
import { formatDay } from './country.ts';
import { FIGURE_SUBJECTS, followedRows, type Figure, type FigureRow } from '../schemas/figures.ts';
import type { Almanac } from './content.ts';
import { cited, sureness, type Cited } from './figures.ts';
import { figureWords } from './figure-words.ts';
import { phaseTitle } from './season.ts';

type Subject = (typeof FIGURE_SUBJECTS)[number];

export type ShelvedRow = {
  row: FigureRow;
  words: string;
  other: string;
  source: Cited;
  about: string;
  inForce: string;
  sure: string;
  note: string;
  isFollowed: boolean;
  holds: boolean;
};
export type ShelvedFigure = {
  id: string;
  figure: InTongue<Figure>;
  rows: ShelvedRow[];
  /** Rows that hold in other places only. */ elsewhere: ShelvedRow[];
};

export const subjectOf = (figure: Figure): Subject => figure.subject ?? 'other';

/** The address of a figure, below the base. */
export const figurePlace = (almanac: Almanac, id: string): string => `figures/${subjectOf(almanac.figures.get(id)!)}/#${id}`;

/** Subjects that have figures, sorted by title. */
export function figureShelves(almanac: Almanac, day: string): { subject: Subject; words: string; figures: ShelvedFigure[] }[] {
  const all = [...almanac.figures].map(([id, figure]) => ({
    id,
    figure,
    rows: figure.rows.map((row) => shelved(almanac, figure, row, day)),
    elsewhere: (almanac.elsewhere.get(id) ?? []).map((row) => ({ ...shelved(almanac, figure, row, day), isFollowed: false })),
  }));
  const byTitle = (a: ShelvedFigure, b: ShelvedFigure): number => (a.figure.title.toLowerCase() < b.figure.title.toLowerCase() ? -1 : 1);
  return FIGURE_SUBJECTS.map((subject) => ({
    subject,
    words: text.subjects[subject],
    figures: all.filter(({ figure }) => subjectOf(figure) === subject).sort(byTitle),
  })).filter(({ figures }) => figures.length > 0);
}

function shelved(almanac: Almanac, figure: Figure, row: FigureRow, day: string): ShelvedRow {
  const source = almanac.sources.get(row.source);
  const { main, other } = figureWords(row, figure.unit, almanac.club.units);
  return {
    row,
    words: main,
    other,
    source: source ? cited(source) : { words: row.source },
    about: [row.at, row.place, row.method, row.phases && text.inPhases(row.phases.map((phase) => phaseTitle(phase, almanac.club)))]
      .filter(Boolean)
      .join('; '),
    inForce: row.until === undefined ? text.from(formatDay(row.from)) : text.fromTo(formatDay(row.from), formatDay(row.until)),
    sure: sureness(row.certainty),
    note: row.note ?? '',
    isFollowed: followedRows(figure).includes(row.id),
    holds: row.from <= day && (row.until === undefined || day <= row.until),
  };
}

/** The rows that the club follows today: one, or one per phase where the source has several. */
export const followedNow = ({ rows }: ShelvedFigure): ShelvedRow[] => rows.filter(({ isFollowed, holds }) => isFollowed && holds);
