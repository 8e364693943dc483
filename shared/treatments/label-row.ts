/**
 * What one row of a label rules out for a treatment that is planned. It never says that a treatment is right: a row that rules
 * nothing out says only that. In the order of gravity: what is not known to be registered, a place that the row is not for and a
 * row past its check-by are to be asked about, whatever else holds; then what the row rules out; then what it leaves to the label.
 * Rows and the day of reading are handed in. Temperatures in C, of every day of the treatment, compared to a tenth of a degree,
 * since labels print whole degrees of another scale. Not known to this: amounts, repeats, what was given before.
 */
import { addDays, type Day } from '../days/day.ts';

export type LabelRow = {
  readonly place: string;
  /** Left out where the row holds none. */
  readonly lowC?: number;
  readonly highC?: number;
  /** May boxes for harvest be on? */
  readonly supers: 'on' | 'off' | 'label';
  /** Days after the end before they may go back. */
  readonly supersBackDays?: number;
  readonly needsBroodless: boolean;
  readonly daysMost?: number;
  /** The last day on which the row may be read. */
  readonly checkBy: Day;
};

export type Planned = {
  readonly start: Day;
  readonly lowC: number;
  readonly highC: number;
  readonly supersOn: boolean;
  readonly brood: boolean;
  /** Empty where it was not said. */
  readonly place: string;
  readonly registered: 'yes' | 'no' | 'not-checked';
  /** The next harvest, where one is to come. */
  readonly harvest?: Day;
};

export type TreatmentState = 'ruled-out' | 'not-ruled-out' | 'ask';

export type TreatmentRule =
  'not-registered' | 'not-checked' | 'place-not-said' | 'other-place' | 'past-check-by' | OutRule | 'supers-by-label' | 'harvest-by-label';
type OutRule = 'too-cold' | 'too-warm' | 'supers-on' | 'brood' | 'harvest-too-soon';

/** The rule that decides stands first; the others hold too. */
export type Judged = { readonly state: TreatmentState; readonly rules: readonly TreatmentRule[] };

export function judgeRow(row: LabelRow, planned: Planned, today: Day): Judged {
  const first = mustAsk(row, planned, today);
  const out = ruledOut(row, planned);
  const last = leftToLabel(row, planned);
  const state = first.length > 0 ? 'ask' : out.length > 0 ? 'ruled-out' : last.length > 0 ? 'ask' : 'not-ruled-out';
  return { state, rules: [...first, ...out, ...last] };
}

/** Where nothing but the registration is known: no row is held for the place. */
export function judgeWithoutRow({ registered }: Pick<Planned, 'registered'>): Judged {
  return { state: 'ask', rules: [...registration(registered), 'other-place'] };
}

/** Of a place in other letters and spaces it is the same. */
export function samePlace(one: string, other: string): boolean {
  const plain = (place: string): string => place.normalize('NFKC').trim().replace(/\s+/gu, ' ').toLowerCase();
  return plain(one) === plain(other);
}

/** The first day on which boxes for harvest may be back; undefined where the row does not say how long the treatment takes. */
export function supersBackOn({ daysMost, supersBackDays = 0 }: LabelRow, start: Day): Day | undefined {
  return daysMost === undefined ? undefined : addDays(start, daysMost + supersBackDays);
}

function mustAsk({ place, checkBy }: LabelRow, planned: Planned, today: Day): TreatmentRule[] {
  const read = today > planned.start ? today : planned.start;
  return [
    ...registration(planned.registered),
    ...(planned.place.trim() === '' ? (['place-not-said'] as const) : samePlace(place, planned.place) ? [] : (['other-place'] as const)),
    ...(read > checkBy ? (['past-check-by'] as const) : []),
  ];
}

function registration(registered: Planned['registered']): TreatmentRule[] {
  return registered === 'yes' ? [] : [registered === 'no' ? 'not-registered' : 'not-checked'];
}

function ruledOut(row: LabelRow, planned: Planned): OutRule[] {
  const back = supersBackOn(row, planned.start);
  const found: [boolean, OutRule][] = [
    [row.lowC !== undefined && tenths(planned.lowC) < tenths(row.lowC), 'too-cold'],
    [row.highC !== undefined && tenths(planned.highC) > tenths(row.highC), 'too-warm'],
    [row.supers === 'off' && planned.supersOn, 'supers-on'],
    [row.needsBroodless && planned.brood, 'brood'],
    [row.supers === 'off' && isToCome(planned) && back !== undefined && planned.harvest! < back, 'harvest-too-soon'],
  ];
  return found.flatMap(([holds, rule]) => (holds ? [rule] : []));
}

function leftToLabel(row: LabelRow, planned: Planned): TreatmentRule[] {
  const back = supersBackOn(row, planned.start);
  const during = isToCome(planned) && (back === undefined || planned.harvest! < back);
  return [
    ...(row.supers === 'label' && planned.supersOn ? (['supers-by-label'] as const) : []),
    ...(during && (row.supers === 'label' || (row.supers === 'off' && back === undefined)) ? (['harvest-by-label'] as const) : []),
  ];
}

/** A harvest before the treatment is none of its business. */
function isToCome({ harvest, start }: Planned): boolean {
  return harvest !== undefined && harvest >= start;
}

function tenths(celsius: number): number {
  return Math.round(celsius * 10);
}
