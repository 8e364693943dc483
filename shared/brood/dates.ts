/**
 * Brood dates from one observation: when the egg was laid, when its cell is sealed, and when the bee emerges. A queen also gets the days
 * on which she mates and lays. A caged queen gives the days on which no worker brood and no drone brood is left. Every date is an
 * earliest and a latest day. The observation narrows them: an open larva is not yet sealed. Half days round outward. Does not hold for
 * chilled brood. Figures and sources: development.ts. Unit: days.
 */
import { addDays, type Day } from '../days/day.ts';
import { development, queenAfterEmerging, type Caste, type Span } from './development.ts';

/** `caged`: laying stopped on this day, so it is the day of the last egg. */
export type Seen = 'egg' | 'open' | 'sealed' | 'emerging' | 'caged';

export type BroodPair = { readonly earliest: Day; readonly latest: Day };

export type BroodDates = {
  readonly laid: BroodPair;
  readonly sealed: BroodPair;
  readonly emerges: BroodPair;
  readonly mates?: BroodPair;
  readonly lays?: BroodPair;
  readonly broodlessWorker?: Day;
  readonly broodlessDrone?: Day;
};

/** Days from the day of the observation, which is day 0. */
type Window = { from: number; to: number };

export function broodDates(caste: Caste, seen: Seen, day: Day): BroodDates {
  const { hatchesDays, sealedDays, emergesDays } = development[caste];
  const laid = laidWindow(seen, development[caste]);
  const sealed = both(later(laid, sealedDays), sealWindow(seen, hatchesDays, emergesDays.most - sealedDays.least));
  const emerges = both(later(laid, emergesDays), emergeWindow(seen));
  const dates = (window: Window): BroodPair => ({
    earliest: addDays(day, Math.floor(window.from)),
    latest: addDays(day, Math.ceil(window.to)),
  });
  return {
    laid: dates(laid),
    sealed: dates(sealed),
    emerges: dates(emerges),
    ...(caste === 'queen' ? queenDates(laid, emerges, dates) : {}),
    ...(seen === 'caged' ? broodless(day) : {}),
  };
}

/** The youngest and the oldest age that such brood can have. */
function laidWindow(seen: Seen, { hatchesDays, sealedDays, emergesDays }: (typeof development)[Caste]): Window {
  const ages: Record<Seen, Span> = {
    caged: { least: 0, most: 0 },
    egg: { least: 0, most: hatchesDays },
    open: { least: hatchesDays, most: sealedDays.most },
    sealed: { least: sealedDays.least, most: emergesDays.most },
    emerging: emergesDays,
  };
  return { from: -Math.ceil(ages[seen].most), to: -Math.floor(ages[seen].least) };
}

/** An open cell is sealed today or later. A sealed cell was sealed today or earlier. */
function sealWindow(seen: Seen, hatchesDays: number, sealedFor: number): Window {
  if (seen === 'sealed' || seen === 'emerging') return { from: -Math.ceil(sealedFor), to: 0 };
  return { from: seen === 'open' ? 0 : hatchesDays, to: Infinity };
}

function emergeWindow(seen: Seen): Window {
  return { from: 0, to: seen === 'emerging' ? 0 : Infinity };
}

function queenDates(laid: Window, emerges: Window, dates: (window: Window) => BroodPair): { mates: BroodPair; lays: BroodPair } {
  const { matesDays, laysDays, matesFromEggDays, laysFromEggDays } = queenAfterEmerging;
  const mates = both(later(laid, matesFromEggDays), later(emerges, matesDays));
  return { mates: dates(mates), lays: dates(both(later(laid, laysFromEggDays), later(mates, laysDays))) };
}

function broodless(day: Day): { broodlessWorker: Day; broodlessDrone: Day } {
  return {
    broodlessWorker: addDays(day, development.worker.emergesDays.most),
    broodlessDrone: addDays(day, development.drone.emergesDays.most),
  };
}

function later(window: Window, days: Span): Window {
  return { from: window.from + days.least, to: window.to + days.most };
}

function both(one: Window, other: Window): Window {
  return { from: Math.max(one.from, other.from), to: Math.min(one.to, other.to) };
}
