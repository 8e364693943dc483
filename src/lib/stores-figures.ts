/* The club's own figures for winter stores, in kilograms. A missing figure is null. */
import { poundsToKilograms } from '../../shared/units/weight.ts';
import type { FeedingFigures } from '../../shared/feeding/stores.ts';
import type { MonthDay } from '../../shared/days/month-day.ts';
import { formatMonthDay } from './country.ts';
import type { AnchorDate, Basis } from '../../shared/season/anchors.ts';
import type { Almanac } from './content.ts';
import { heldRange } from './calculator-figures.ts';
import { datedWords } from './season-words.ts';
import * as text from './stores-figures.en.ts';

export type HeldStores = {
  readonly frameKg: { readonly deep: number | null; readonly medium: number | null; readonly shallow: number | null };
  readonly targetKg: number | null;
  readonly feeding: FeedingFigures | null;
};

export function heldStores(almanac: Almanac, day: string): HeldStores {
  return {
    frameKg: {
      deep: heldKg(almanac, 'frame-honey-deep', day, 'least'),
      medium: heldKg(almanac, 'frame-honey-medium', day, 'least'),
      shallow: heldKg(almanac, 'frame-honey-shallow', day, 'least'),
    },
    targetKg: heldKg(almanac, 'winter-stores-target', day, 'most'),
    feeding: heldFeeding(almanac, day),
  };
}

/** For each district the last day for syrup, with its basis. Empty where there is no basis. */
export function heldFeedBy({ seasons, forage }: Almanac): { readonly district: string; readonly day: MonthDay; readonly words: string }[] {
  const titles = new Map(forage.map(({ id, data }) => [id, data.title.toLowerCase()]));
  return seasons.flatMap(({ id, name, anchors }) => {
    const last = anchors['last-syrup'];
    if (!last) return [];
    const basis = datedWords(last, { titles, main: seasons[0]!.name });
    return [{ district: id, day: last.earliest, words: feedByWords(last, name, basis) }];
  });
}

/** Normals show when days become too cold. Bees must dry syrup before that, and nights are colder, so the day itself is too late. */
function feedByWords({ earliest, basis }: AnchorDate, name: string, from: string): string {
  const day = formatMonthDay(earliest);
  return rootOf(basis).kind === 'temperature' ? text.beforeCold(day, name, from) : text.byDay(day, name, from);
}

const rootOf = (basis: Basis): Basis => (basis.kind === 'shifted' ? rootOf(basis.of) : basis);

/** Takes the larger end of a target and the smaller end of a frame's content, so that no colony runs short. */
function heldKg(almanac: Almanac, figureId: string, day: string, end: 'least' | 'most'): number | null {
  const range = heldRange(almanac, figureId, day);
  const unit = almanac.figures.get(figureId)?.unit;
  if (!range || (unit !== 'lb' && unit !== 'kg')) return null;
  return unit === 'lb' ? poundsToKilograms(range[end]) : range[end];
}

function heldFeeding(almanac: Almanac, day: string): FeedingFigures | null {
  const efficiency = heldRange(almanac, 'feed-efficiency', day);
  const sugar = heldRange(almanac, 'stores-water-share', day);
  return efficiency && sugar && { sugarShareOfStores: sugar.least, efficiencyLeast: efficiency.least, efficiencyMost: efficiency.most };
}
