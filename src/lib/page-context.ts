/*
 * Page context: data that a page needs besides its own words. It holds source notes in reading order, cautions, who to ask next, and the
 * review record. Each page has its own object, which is filled while its words are rendered.
 */
import { formatDay } from './country.ts';
import { tongues, type Tongue } from '../../shared/country/language.ts';
import type { Day } from '../../shared/days/day.ts';
import { formatMonthDays } from '../../shared/days/year-span.ts';
import type { Contact } from '../schemas/club.ts';
import type { Origin } from '../schemas/origin.ts';
import type { Almanac } from './content.ts';
import { contactFor, inSentence, lineNumber, reached, type Reached } from './contacts.ts';
import { cited, figureNote, rowOn, type Cited } from './figures.ts';
import { figureWords } from './figure-words.ts';
import type { ContactShown, RenderContext, WindowShown } from './render-context.ts';
import { cautionsFor, type Placed } from './hazards.ts';
import { pageExists } from './rooms.ts';
import { addressFor, langOf, languageFor, otherTongue } from './tongues.ts';
import { packageDays } from './package-figures.ts';
import { edition } from './settings.ts';
import { windowsOf, windowsText } from './season.ts';

export type Note = {
  number: number;
  words: string;
  figure?: string;
  /** The source that the words begin with. */ source?: Cited;
  /** The language of the words, where it is not the page's. */ lang?: Tongue;
};
export type Review = {
  /** Whose check it is, where it is not the club's: "editors of the common book"; and what the club itself compared. */
  book?: { editors: string; compared: { day: string; by: string } | null };
  checked?: string | undefined;
  checkedDay?: string | undefined;
  /** A meeting is not checked again: it will be over. */
  next?: string | undefined;
  nextDay?: string | undefined;
  by?: string | undefined;
  history: { day: string; what: string }[];
  /** The language of the history, where it is not the page's. */
  lang?: Tongue | undefined;
};
export type Asked = {
  duty: string;
  name: string;
  'said-in'?: Contact['said-in'];
  ask: string;
  hours?: string | undefined;
  reached: Reached;
};

export type PageContext = {
  notes: Note[];
  /** Ids of the sources of the texts of local/ on the page. */
  sources: string[];
  around: RenderContext;
  cautions: Placed[];
  /** The number of a note, which is added where the page does not have it. */
  noteOf: (words: string, source?: Cited, figure?: string, lang?: Tongue) => number;
};

/** Creates the context of one page. `work` decides its cautions. */
export function createPageContext(almanac: Almanac, base: string, day: string, work?: readonly string[]): PageContext {
  const notes: Note[] = [];
  const noteOf = (words: string, source?: Cited, figure?: string, lang?: Tongue): number => {
    const held = notes.find((note) => note.words === words);
    if (held) return held.number;
    notes.push({ number: notes.length + 1, words, ...(source && { source }), ...(figure && { figure }), ...(lang && { lang }) });
    return notes.length;
  };
  const language = languageFor(almanac);
  const windowSaid = (when: string): WindowShown | null => {
    const windows = windowsOf(when, almanac.seasons);
    if (!windows) return null;
    const { from, to } = windows[0]!.window;
    return { words: formatMonthDays(from, to, language), windows: windowsText(windows), ...(otherTongue(almanac) && { lang: language }) };
  };
  return {
    notes,
    noteOf,
    sources: [],
    cautions: cautionsFor(work, almanac.cautions),
    around: {
      base,
      frame: otherTongue(almanac) && almanac.club.language,
      tongue: otherTongue(almanac),
      linkExists: (address) => pageExists(almanac, address),
      addressFor: (address) => addressFor(almanac, address),
      langOf: (name) => langOf(almanac, name),
      figure: (id, rowId) => {
        const figure = almanac.figures.get(id);
        const row = figure && rowOn(figure, rowId ?? figure.follows, day);
        if (!figure || !row) return null;
        const { main, other } = figureWords(row, figure.unit, almanac.club.units, otherTongue(almanac));
        const source = almanac.sources.get(row.source);
        const note = noteOf(figureNote(figure, row, source), source && cited(source), id, figure.lang);
        return { figure: id, row: row.id, unit: figure.unit, main, other, value: row.value, least: row.least, most: row.most, note };
      },
      contact: (duty) => {
        const contact = contactFor(almanac.club, duty);
        return contact ? { ...named(contact, almanac), hours: contact.hours, ...reached(contact, day) } : null;
      },
      drawing: (name) => {
        const held = almanac.drawings.get(name);
        return held ? { title: held.data.title, words: held.data.words, parts: held.data.parts ?? [], lines: held.body } : null;
      },
      picture: () => null,
      local: () => null,
      caution: (hazard) => almanac.cautions.get(hazard) ?? null,
      packageDays: (name) => packageDays(almanac, day, name),
      line: (of) => lineNumber(almanac.club, of),
      dayOf: (anchor) => windowSaid(`${anchor} to ${anchor}`),
      window: windowSaid,
    },
  };
}

function named(contact: Contact, almanac: Almanac): Pick<ContactShown, 'name' | 'within' | 'lang'> {
  const tongue = otherTongue(almanac);
  if (tongue === undefined) return { name: contact.name, within: inSentence(contact) };
  const within = contact['said-in']?.[tongue];
  return within === undefined
    ? { name: contact.name, within: inSentence(contact), lang: almanac.club.language }
    : { name: within.replace(/^./u, (letter) => letter.toUpperCase()), within };
}

/** The sources of a page that its figures have not named already. */
export const furtherSources = (almanac: Almanac, ids: readonly string[]): Cited[] =>
  ids.flatMap((id) => {
    const source = almanac.sources.get(id);
    return source ? [cited(source)] : [];
  });

export type Reviewed = {
  checked?: Day | undefined;
  'next-check'?: Day | undefined;
  by?: string | undefined;
  history?: { changed: Day; what: string }[] | undefined;
};

/** `origin`: whose claim the page is; a page of a club without books is its own. Undefined for a meeting without a review. */
export const reviewOf = (fields: Reviewed, origin?: Origin, lang?: Tongue): Review | undefined =>
  fields.checked === undefined && fields.history === undefined ? undefined : { ...dated(fields, origin), ...(lang && { lang }) };

/** The history of a page is told in the language of its original. */
export function historyLang(almanac: Almanac, name: string): Tongue | undefined {
  const spoken = almanac.spoken.get(name);
  return spoken?.translated ? tongues.find((tongue) => tongue !== spoken.tongue) : langOf(almanac, name);
}

const dated = (fields: Reviewed, origin?: Origin): Review => ({
  ...(origin?.book
    ? { book: { editors: origin.book.editors, compared: origin.compared && { ...origin.compared, day: formatDay(origin.compared.day) } } }
    : {}),
  checked: fields.checked && formatDay(fields.checked),
  checkedDay: fields.checked,
  next: fields['next-check'] && formatDay(fields['next-check']),
  nextDay: fields['next-check'],
  by: fields.by,
  history: (fields.history ?? []).map(({ changed, what }) => ({ day: formatDay(changed), what })),
});

/** Undefined where nobody here has the duty, which a page of a book may name. */
export function askOf(almanac: Almanac, duty: string): Asked | undefined {
  const contact = contactFor(almanac.club, duty);
  return contact && askedOf(contact);
}

/** For what a club writes itself: checks refuse a duty that nobody has. */
export function askWithin(almanac: Almanac, duty: string): Asked {
  const asked = askOf(almanac, duty);
  if (!asked) throw new Error(`askWithin: needs a contact with the duty ${duty}, which checks refuse to be without`);
  return asked;
}

function askedOf(contact: Contact): Asked {
  return { ...contact, reached: reached(contact, edition.day) };
}
