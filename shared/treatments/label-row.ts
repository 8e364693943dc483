/**
 * What one label row rules out for a planned treatment. It never says that a treatment is right.
 * Four states. Ask: something is unknown. Ruled out: the label forbids it. Works poorly: no label forbids it, and trials say that it does
 * little. Nothing found: none of these.
 * Reasons come in order of gravity. First what is unknown: registration, a row for another place, a row past its check-by date or from
 * memory, a label that was not opened or is no longer sold. Then what the label forbids, then what it leaves open or what was not
 * entered, then what works poorly.
 * Temperatures are in C. Each limit names the temperature it means and is compared with that one: each day's highest, the mean of day and
 * night, or any hour. The comparison is to a tenth of a degree, because labels print whole degrees of another scale. Amounts, repeats and
 * earlier treatments are not considered here.
 */
import { addDays, type Day } from '../days/day.ts';

export type WarmthKind = 'daily-high' | 'mean' | 'any-time';

export type WarmthLimit = {
  readonly of: WarmthKind;
  readonly leastC?: number;
  readonly mostC?: number;
  /** The days that the label names. The limit is compared with all days anyway. */
  readonly when?: string;
};

export type LabelRow = {
  readonly place: string;
  /** How the label was seen. */
  readonly seen: 'itself' | 'quoted' | 'memory' | 'not-opened';
  readonly registration?: string;
  readonly labelDate?: Day;
  readonly superseded?: boolean;
  /** What the label forbids. */
  readonly limits: readonly WarmthLimit[];
  readonly forbidsBrood: boolean;
  /** Whether honey supers for harvest may be on the hive. */
  readonly supers: 'on' | 'off' | 'label';
  /** Days after the end of treatment until supers may go back. */
  readonly supersBackDays?: number;
  /** What works poorly but is not forbidden. */
  readonly poorWithBrood: boolean;
  readonly poorOutside: readonly WarmthLimit[];
  readonly daysMost?: number;
  /** The last day on which the row may be used. */
  readonly checkBy: Day;
};

export type Planned = {
  readonly start: Day;
  /** The highest temperature of the coolest day, and of the warmest. */
  readonly lowestHighC: number;
  readonly highestHighC: number;
  /** Mean of day and night over all days, where it was entered. */
  readonly meanC?: number;
  /** The coldest hour, where it was entered. */
  readonly coldestC?: number;
  readonly supersOn: boolean;
  readonly brood: boolean;
  /** Empty where it was not entered. */
  readonly place: string;
  readonly registered: 'yes' | 'no' | 'not-checked';
  /** The next harvest, where one is planned. */
  readonly harvest?: Day;
};

export type TreatmentState = 'ruled-out' | 'ask' | 'works-poorly' | 'nothing-found';

type AskRule =
  'not-registered' | 'not-checked' | 'place-not-said' | 'other-place' | 'past-check-by' | 'not-opened' | 'from-memory' | 'superseded';
type OutRule = 'too-cold' | 'too-warm' | 'supers-on' | 'brood-forbidden' | 'harvest-too-soon';
type LeftRule =
  | 'mean-not-told'
  | 'coldest-not-told'
  | 'supers-by-label'
  | 'harvest-by-label'
  | 'only-quoted'
  | 'no-registration-number'
  | 'no-label-date';
type PoorRule = 'poor-with-brood' | 'poor-cold' | 'poor-warm';
export type TreatmentRule = AskRule | OutRule | LeftRule | PoorRule;

/** The deciding rule comes first. The other rules apply too. */
export type Judgement = { readonly state: TreatmentState; readonly rules: readonly TreatmentRule[] };

export function judgeRow(row: LabelRow, planned: Planned, today: Day): Judgement {
  const ask = mustAsk(row, planned, today);
  const out = ruledOut(row, planned);
  const left = leftToLabel(row, planned);
  const poor = worksPoorly(row, planned);
  const state =
    ask.length > 0 ? 'ask' : out.length > 0 ? 'ruled-out' : left.length > 0 ? 'ask' : poor.length > 0 ? 'works-poorly' : 'nothing-found';
  return { state, rules: [...ask, ...out, ...left, ...poor] };
}

/** Where only the registration is known: the club has no row for the place. */
export function judgeWithoutRow({ registered }: Pick<Planned, 'registered'>): Judgement {
  return { state: 'ask', rules: [...registration(registered), 'other-place'] };
}

/** Compares places without regard to case and spaces. */
export function samePlace(one: string, other: string): boolean {
  const plain = (place: string): string => place.normalize('NFKC').trim().replace(/\s+/gu, ' ').toLowerCase();
  return plain(one) === plain(other);
}

/** The first day on which supers for harvest may be back. Undefined where the row does not state how long the treatment takes. */
export function supersBackOn({ daysMost, supersBackDays = 0 }: Pick<LabelRow, 'daysMost' | 'supersBackDays'>, start: Day): Day | undefined {
  return daysMost === undefined ? undefined : addDays(start, daysMost + supersBackDays);
}

/** Compares one limit with the planned days. `unknown` where its temperature was not entered and could lie outside. */
export function againstLimit({ of, leastC, mostC }: WarmthLimit, planned: Planned): { cold: boolean; warm: boolean; unknown: boolean } {
  const { lowestHighC, highestHighC, meanC, coldestC } = planned;
  const under = (value: number | undefined): boolean => leastC !== undefined && value !== undefined && tenths(value) < tenths(leastC);
  const over = (value: number | undefined): boolean => mostC !== undefined && value !== undefined && tenths(value) > tenths(mostC);
  switch (of) {
    case 'daily-high':
      return { cold: under(lowestHighC), warm: over(highestHighC), unknown: false };
    case 'mean': {
      // The mean lies below the highest of all hours, so a few weeks can be judged without it.
      const cold = under(meanC ?? highestHighC);
      return { cold, warm: over(meanC), unknown: meanC === undefined && !cold && (leastC !== undefined || over(highestHighC)) };
    }
    case 'any-time': {
      const cold = under(coldestC ?? lowestHighC);
      return { cold, warm: over(highestHighC), unknown: coldestC === undefined && !cold && leastC !== undefined };
    }
  }
}

function mustAsk({ place, checkBy, seen, superseded }: LabelRow, planned: Planned, today: Day): AskRule[] {
  const read = today > planned.start ? today : planned.start;
  const found: [boolean, AskRule][] = [
    [planned.place.trim() === '', 'place-not-said'],
    [planned.place.trim() !== '' && !samePlace(place, planned.place), 'other-place'],
    [read > checkBy, 'past-check-by'],
    [seen === 'not-opened', 'not-opened'],
    [seen === 'memory', 'from-memory'],
    [superseded === true, 'superseded'],
  ];
  return [...registration(planned.registered), ...holding(found)];
}

function registration(registered: Planned['registered']): AskRule[] {
  return registered === 'yes' ? [] : [registered === 'no' ? 'not-registered' : 'not-checked'];
}

function ruledOut(row: LabelRow, planned: Planned): OutRule[] {
  const back = supersBackOn(row, planned.start);
  const met = row.limits.map((limit) => againstLimit(limit, planned));
  return holding<OutRule>([
    [met.some(({ cold }) => cold), 'too-cold'],
    [met.some(({ warm }) => warm), 'too-warm'],
    [row.supers === 'off' && planned.supersOn, 'supers-on'],
    [row.forbidsBrood && planned.brood, 'brood-forbidden'],
    [row.supers === 'off' && isToCome(planned) && back !== undefined && planned.harvest! < back, 'harvest-too-soon'],
  ]);
}

function leftToLabel(row: LabelRow, planned: Planned): LeftRule[] {
  const back = supersBackOn(row, planned.start);
  const during = isToCome(planned) && (back === undefined || planned.harvest! < back);
  const unknown = [...row.limits, ...row.poorOutside].filter((limit) => againstLimit(limit, planned).unknown);
  const isSeen = row.seen === 'itself' || row.seen === 'quoted';
  return holding<LeftRule>([
    [unknown.some(({ of }) => of === 'mean'), 'mean-not-told'],
    [unknown.some(({ of }) => of === 'any-time'), 'coldest-not-told'],
    [row.supers === 'label' && planned.supersOn, 'supers-by-label'],
    [during && (row.supers === 'label' || (row.supers === 'off' && back === undefined)), 'harvest-by-label'],
    [row.seen === 'quoted', 'only-quoted'],
    [isSeen && row.registration === undefined, 'no-registration-number'],
    [isSeen && row.labelDate === undefined, 'no-label-date'],
  ]);
}

function worksPoorly(row: LabelRow, planned: Planned): PoorRule[] {
  const met = row.poorOutside.map((limit) => againstLimit(limit, planned));
  return holding<PoorRule>([
    [row.poorWithBrood && planned.brood, 'poor-with-brood'],
    [met.some(({ cold }) => cold), 'poor-cold'],
    [met.some(({ warm }) => warm), 'poor-warm'],
  ]);
}

const holding = <Rule>(found: readonly (readonly [boolean, Rule])[]): Rule[] => found.flatMap(([holds, rule]) => (holds ? [rule] : []));

/** A harvest before the treatment does not matter. */
function isToCome({ harvest, start }: Planned): boolean {
  return harvest !== undefined && harvest >= start;
}

function tenths(celsius: number): number {
  return Math.round(celsius * 10);
}
