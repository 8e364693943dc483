/* The club's own figures for winter stores, in kilograms; what the club lacks is null. */
import { poundsToKilograms } from '../../shared/units/weight.ts';
import type { FeedingFigures } from '../../shared/feeding/stores.ts';
import { formatMonthDay, type MonthDay } from '../../shared/days/month-day.ts';
import type { Almanac } from './almanac.ts';
import { heldRange } from './calculator-figures.ts';
import { datedWords } from './season-words.ts';

export type HeldStores = {
  readonly frameKg: { readonly deep: number | null; readonly medium: number | null; readonly shallow: number | null };
  readonly targetKg: number | null;
  readonly feeding: FeedingFigures | null;
};

export function heldStores(almanac: Almanac, day: string): HeldStores {
  return {
    frameKg: {
      deep: heldKg(almanac, 'frame-honey-deep', day),
      medium: heldKg(almanac, 'frame-honey-medium', day),
      shallow: heldKg(almanac, 'frame-honey-shallow', day),
    },
    targetKg: heldKg(almanac, 'winter-stores-target', day),
    feeding: heldFeeding(almanac, day),
  };
}

/** For each district the early end of the days on which it grows too cold for syrup, and where that is from; none where nothing says it. */
export function heldFeedBy({ seasons, forage }: Almanac): { readonly district: string; readonly day: MonthDay; readonly words: string }[] {
  const titles = new Map(forage.map(({ id, data }) => [id, data.title.toLowerCase()]));
  return seasons.flatMap(({ id, name, anchors }) => {
    const last = anchors['last-syrup'];
    if (!last) return [];
    const words = `${formatMonthDay(last.earliest)} in an early year, ${formatMonthDay(last.expected)} in a usual one, in ${name}: ${datedWords(last, { titles, main: seasons[0]!.name })}.`;
    return [{ district: id, day: last.earliest, words }];
  });
}

/** Of a range the larger end, so that no colony is left short. */
function heldKg(almanac: Almanac, figureId: string, day: string): number | null {
  const range = heldRange(almanac, figureId, day);
  const unit = almanac.figures.get(figureId)?.unit;
  if (!range || (unit !== 'lb' && unit !== 'kg')) return null;
  return unit === 'lb' ? poundsToKilograms(range.most) : range.most;
}

function heldFeeding(almanac: Almanac, day: string): FeedingFigures | null {
  const efficiency = heldRange(almanac, 'feed-efficiency', day);
  const sugar = heldRange(almanac, 'stores-water-share', day);
  return efficiency && sugar && { sugarShareOfStores: sugar.least, efficiencyLeast: efficiency.least, efficiencyMost: efficiency.most };
}
