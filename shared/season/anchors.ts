/**
 * Anchor days of a hive's year, from which other days are counted. Each anchor comes from the first available of:
 * 1. members' dates of three years or more (the median; the observed span, or below five years at least the usual doubt either way);
 * 2. a date that the club takes from a publication;
 * 3. a published freeze date;
 * 4. the bloom of the plant that the club uses as its sign;
 * 5. a temperature that the normals pass;
 * 6. the date of another district, moved by days;
 * 7. the club's own guess.
 * Its basis and its possible error always go with it.
 */
import { addMonthDays, monthDayOf, type MonthDay } from '../days/month-day.ts';
import type { Day } from '../days/day.ts';
import { bloomOf, type Plant, type UsualDoubt } from './bloom.ts';
import type { Climate } from './climate.ts';
import { crossings } from './crossings.ts';
import { dailyFromMonthly } from './daily-curve.ts';
import { daysSeen, spanAround, type DaysSeen } from './observed-days.ts';

/** A temperature and the side of the year. `figure` names the figure that holds the temperature. */
type Passing = { readonly of: 'minimum' | 'maximum'; readonly way: 'up' | 'down'; readonly figure: 'freezeC' | 'clusterC' | 'syrupC' };

export type AnchorRule = {
  readonly id: string;
  readonly words: string;
  /** The shift of a district that moves it. A cold place is later in spring and earlier in fall. */
  readonly half: 'spring' | 'fall';
  /** The anchor that it cannot precede within one year. */
  readonly after?: string;
  readonly freeze?: 'last' | 'first';
  readonly passing?: Passing;
};

export const anchorRules = [
  { id: 'first-pollen', words: 'first pollen', half: 'spring' },
  { id: 'first-drone', words: 'first drone', half: 'spring' },
  { id: 'last-freeze', words: 'last freeze', half: 'spring', freeze: 'last', passing: { of: 'minimum', way: 'up', figure: 'freezeC' } },
  { id: 'swarm', words: 'first swarm', half: 'spring', after: 'first-drone' },
  { id: 'main-flow-start', words: 'start of main flow', half: 'spring', after: 'first-pollen' },
  { id: 'main-flow-end', words: 'end of main flow', half: 'spring', after: 'main-flow-start' },
  { id: 'fall-flow', words: 'fall flow', half: 'fall', after: 'main-flow-end' },
  {
    id: 'first-freeze',
    words: 'first freeze',
    half: 'fall',
    after: 'main-flow-start',
    freeze: 'first',
    passing: { of: 'minimum', way: 'down', figure: 'freezeC' },
  },
  {
    id: 'last-syrup',
    words: 'last syrup',
    half: 'fall',
    after: 'main-flow-end',
    passing: { of: 'maximum', way: 'down', figure: 'syrupC' },
  },
  { id: 'cluster', words: 'cluster', half: 'fall', after: 'fall-flow', passing: { of: 'maximum', way: 'down', figure: 'clusterC' } },
  { id: 'brood-stops', words: 'end of brood', half: 'fall', after: 'fall-flow' },
] as const satisfies readonly AnchorRule[];

export type AnchorId = (typeof anchorRules)[number]['id'];
export const anchorIds: readonly AnchorId[] = anchorRules.map(({ id }) => id);

export type Basis =
  | { readonly kind: 'observed'; readonly years: number }
  | { readonly kind: 'published' }
  | { readonly kind: 'printed' }
  | { readonly kind: 'degree-days'; readonly plant: string }
  | { readonly kind: 'bloom-seen'; readonly plant: string; readonly years: number }
  | { readonly kind: 'temperature'; readonly degreesC: number }
  | { readonly kind: 'shifted'; readonly days: number; readonly of: Basis }
  | { readonly kind: 'guess' };

/** `earliest` and `latest` equal the day itself where no possible error is known. */
export type AnchorDate = { readonly expected: MonthDay; readonly earliest: MonthDay; readonly latest: MonthDay; readonly basis: Basis };

export type SeasonFigures = {
  readonly freezeC: number | null;
  readonly clusterC: number | null;
  readonly syrupC: number | null;
  /** For a crossing of the freeze temperature and for dates from sums. */
  readonly doubt: UsualDoubt | null;
  /** For any other crossing. */
  readonly crossingDays: number | null;
};

export type PlaceGiven = {
  readonly climate: Climate | null;
  readonly observed: readonly { readonly [id in AnchorId]?: Day | undefined }[];
  readonly signs: { readonly [id in AnchorId]?: Plant | undefined };
  /** Days that the club takes from a publication, as printed there. */
  readonly printed?: { readonly [id in AnchorId]?: DaysSeen | undefined };
  readonly guesses: { readonly [id in AnchorId]?: DaysSeen | undefined };
  readonly figures: SeasonFigures;
  /** The district whose dates are moved to this one where it has none of its own. */
  readonly like?: { readonly anchors: Anchors; readonly laterByDays: number; readonly fallLaterByDays: number } | undefined;
};

export type Anchors = { readonly [id in AnchorId]?: AnchorDate | undefined };

export function anchorsOf(place: PlaceGiven): Anchors {
  return Object.fromEntries(anchorRules.map((rule) => [rule.id, anchorOf(rule, rule.id, place)]));
}

function anchorOf(rule: AnchorRule, id: AnchorId, place: PlaceGiven): AnchorDate | undefined {
  const [printed, guess] = [place.printed?.[id], place.guesses[id]];
  return (
    fromObserved(id, place) ??
    (printed && dated(printed, { kind: 'printed' })) ??
    fromPublished(rule, place) ??
    fromBloom(id, place) ??
    fromTemperature(rule, place) ??
    fromOther(rule, id, place) ??
    (guess && dated(guess, { kind: 'guess' }))
  );
}

const dated = ({ middle, earliest, latest }: DaysSeen, basis: Basis): AnchorDate => ({ expected: middle, earliest, latest, basis });

function fromObserved(id: AnchorId, { observed, figures }: PlaceGiven): AnchorDate | undefined {
  const days = observed.flatMap((year) => year[id] ?? []).map(monthDayOf);
  const seen = daysSeen(days, figures.doubt?.days);
  return seen ? dated(seen, { kind: 'observed', years: days.length }) : undefined;
}

function fromPublished({ freeze }: AnchorRule, { climate, figures }: PlaceGiven): AnchorDate | undefined {
  const day = freeze && climate?.freezes?.[freeze];
  return day ? dated(spanAround(day, figures.doubt?.days ?? 0), { kind: 'published' }) : undefined;
}

function fromBloom(id: AnchorId, { climate, signs, figures }: PlaceGiven): AnchorDate | undefined {
  const plant = signs[id];
  const bloom = plant && bloomOf(plant, climate, figures.doubt);
  if (!plant || !bloom?.ok) return undefined;
  return dated(
    bloom.value,
    bloom.value.from === 'observed'
      ? { kind: 'bloom-seen', plant: plant.id, years: bloom.value.years }
      : { kind: 'degree-days', plant: plant.id },
  );
}

function fromTemperature({ passing }: AnchorRule, { climate, figures }: PlaceGiven): AnchorDate | undefined {
  const degreesC = passing && figures[passing.figure];
  const doubt = passing?.figure === 'freezeC' ? figures.doubt?.days : figures.crossingDays;
  if (!passing || !climate || typeof degreesC !== 'number' || typeof doubt !== 'number') return undefined;
  const found = crossings(dailyFromMonthly(passing.of === 'minimum' ? climate.normalsC.minByMonth : climate.normalsC.maxByMonth), degreesC);
  return found.ok ? dated(spanAround(found.value[passing.way], doubt), { kind: 'temperature', degreesC }) : undefined;
}

function fromOther({ half }: AnchorRule, id: AnchorId, { like }: PlaceGiven): AnchorDate | undefined {
  const other = like?.anchors[id];
  if (!like || !other) return undefined;
  const days = half === 'spring' ? like.laterByDays : like.fallLaterByDays;
  const moved = (day: MonthDay) => addMonthDays(day, days);
  const basis: Basis = days === 0 ? other.basis : { kind: 'shifted', days, of: other.basis };
  return { expected: moved(other.expected), earliest: moved(other.earliest), latest: moved(other.latest), basis };
}
