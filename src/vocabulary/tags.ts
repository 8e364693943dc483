/*
 * The tags an author may write, drawn. What a tag shows (a figure's words, a contact's number) is chosen by the library
 * and handed in as the page's surroundings; here it only becomes elements.
 */
import type { Element, ElementContent } from 'hast';
import { h } from 'hastscript';
import { attribute, type Tag, type TagNode } from '../reader/prose.ts';
import { drawing, type DrawingShown } from './drawing.ts';
import type { PictureFiles } from './picture.ts';
import { plainDecimal } from '../../shared/numbers/show-number.ts';
import { phoneParts } from '../../shared/words/phone-parts.ts';

export type FigureShown = {
  figure: string;
  row: string;
  unit: string;
  main: string;
  other: string;
  value?: number | undefined;
  least?: number | undefined;
  most?: number | undefined;
  /** The number of its source note on this page. */
  note: number;
};

/** A caution as its file has it: the line for a step, the rule for a box, and what to do once it has happened. */
export type CautionShown = { line: string; says: readonly string[]; 'if-it-happens'?: readonly string[] | undefined };

/** `consent`: from and until when a person's number may be shown; `over`: it may not. `place`: its name on the page of contacts. */
export type ContactShown = { name: string; phone?: string | undefined; place?: string; consent?: string | undefined; over?: true };

/** What a page hands to its words. */
export type Surroundings = {
  /** The folder the site is published under, with both slashes. */
  base: string;
  /** False where no page of this almanac stands at an address of this site. */
  leads: (address: string) => boolean;
  /** A figure as it reads here, its note put in the margin; null when no row is in force. */
  figure: (id: string, row?: string) => FigureShown | null;
  contact: (duty: string) => ContactShown | null;
  /** A drawing by its name; null where the club took it down. */
  drawing: (name: string) => DrawingShown | null;
  /** A picture beside the page, by its address as written; null where it is not shown. */
  picture: (url: string) => PictureFiles | null;
  /** The caution of a hazard; null where the club has none to show. */
  caution: (hazard: string) => CautionShown | null;
  /** A date of the package calendar as offsets for each way of starting: `candy drawn 4 7;...`; null where the club lacks a figure. */
  packageDays: (name: string) => string | null;
  /** A day of the year here, such as the last syrup, in words, with its day in each district for the browser; null where there is none. */
  dayOf: (anchor: string) => { words: string; windows: string } | null;
  /** What a step's own `when:` says here, in words, with its windows for the browser; null for any time. */
  window: (when: string) => { words: string; windows: string } | null;
};

type Draw = (tag: TagNode, around: Surroundings) => ElementContent | undefined;

export const TAGS_DRAWN: Record<Exclude<Tag, 'Task'>, Draw> = {
  Figure: (tag, around) => figure(around.figure(attribute(tag, 'id') ?? '', attribute(tag, 'row'))),
  Contact: (tag, around) => contact(around.contact(attribute(tag, 'duty') ?? ''), around.base),
  Day: (tag, around) => day(around.dayOf(attribute(tag, 'of') ?? '')),
  Caution: (tag, around) => {
    const id = attribute(tag, 'id') ?? '';
    const caution = around.caution(id);
    const sentences = attribute(tag, 'part') === 'if-it-happens' ? caution?.['if-it-happens'] : caution?.says;
    return sentences && rule(id, sentences);
  },
  Drawing: (tag, around) => drawing(around.drawing(attribute(tag, 'name') ?? '')),
  Example: (tag, around) => {
    const tool = attribute(tag, 'tool') ?? '';
    const words = tag.children.map((child) => ('value' in child ? child.value : '')).join('') || 'Work it out';
    if (!around.leads(`/work-it-out/${tool}/`)) return h('span', words);
    return h('a', { class: 'example', href: `${around.base}work-it-out/${tool}/#${attribute(tag, 'with') ?? ''}` }, words);
  },
};

const day = (shown: { words: string; windows: string } | null): Element =>
  shown ? h('span', { dataWindows: shown.windows }, shown.words) : h('span', 'no date for this club');

/** A number of the almanac, machine-readable, with the mark of its source. */
export function figure(shown: FigureShown | null): Element {
  if (!shown) return h('span', 'no figure for this club');
  const value = shown.value === undefined ? `${plainDecimal(shown.least!)}/${plainDecimal(shown.most!)}` : plainDecimal(shown.value);
  return h('span', { class: 'figure' }, [
    h('data', { value, dataFigure: shown.figure, dataRow: shown.row, dataUnit: shown.unit }, shown.main),
    shown.other ? ` (${shown.other})` : '',
    noteMark(shown.note),
  ]);
}

export const noteMark = (note: number): Element =>
  h('sup', { class: 'mark' }, [h('a', { href: `#note-${note}`, ariaLabel: `Source ${note}` }, String(note))]);

/** The sentences of a caution where a page needs them: a page quotes the rule and never restates it. */
const rule = (id: string, sentences: readonly string[]): Element =>
  h(
    'ul',
    { class: 'rule', dataRule: id },
    sentences.map((sentence) =>
      h(
        'li',
        phoneParts(sentence).map(({ words, dials }) => (dials ? h('a', { class: 'phone', href: `tel:${dials}` }, words) : words)),
      ),
    ),
  );

/** A duty in the middle of a sentence: "the county extension office, 330-555-0102". A person's number is shown by the page's script. */
function contact(shown: ContactShown | null, base: string): Element {
  if (!shown) return h('span', 'the club');
  const { phone, place, consent, over } = shown;
  const name = `the ${/^[A-Z][a-z]/.test(shown.name) ? shown.name.charAt(0).toLowerCase() + shown.name.slice(1) : shown.name}`.replace(
    /^the (the|your) /,
    '$1 ',
  );
  if (!phone && !over) return h('span', name);
  const to = phone && `tel:${phone.replace(/[^+\d]/g, '')}`;
  const elsewhere = { href: `${base}who-to-ask/#${place}` };
  const link = over
    ? h('a', elsewhere, 'see whom to ask')
    : consent
      ? h('a', { ...elsewhere, dataReach: consent, dataReachTo: to, dataReachWords: phone }, 'see whom to ask')
      : h('a', { href: to }, phone);
  return h('span', [`${name}, `, link]);
}
