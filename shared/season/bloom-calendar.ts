/**
 * Bloom calendar of one district: every plant's own dates, or those of the main district moved by days. One shift applies in spring, the
 * other after the end of the main flow. Unit: days of a common year.
 */
import { addMonthDays, type MonthDay } from '../days/month-day.ts';
import { ok, type Result } from '../result.ts';
import type { Basis } from './anchors.ts';
import { bloomOf, type Bloom, type NoBloom, type Plant, type UsualDoubt } from './bloom.ts';
import type { Climate } from './climate.ts';
import { daysApart } from './observed-days.ts';

export type BloomHere = { readonly plant: string; readonly bloom: Result<Bloom & { readonly basis: Basis }, NoBloom> };

export type BloomPlace = {
  readonly climate: Climate | null;
  readonly usual: UsualDoubt | null;
  readonly like?:
    | {
        readonly blooms: readonly BloomHere[];
        readonly laterByDays: number;
        readonly fallLaterByDays: number;
        readonly fallFrom: MonthDay | undefined;
      }
    | undefined;
};

export function bloomsHere(plants: readonly Plant[], { climate, usual, like }: BloomPlace): BloomHere[] {
  return plants.map((plant) => {
    const own = bloomOf(plant, climate, usual);
    if (own.ok) return { plant: plant.id, bloom: ok({ ...own.value, basis: basisOf(plant, own.value) }) };
    const other = like?.blooms.find((each) => each.plant === plant.id)?.bloom;
    return { plant: plant.id, bloom: like && other?.ok ? ok(moved(other.value, shiftFor(other.value, like))) : own };
  });
}

const basisOf = ({ id }: Plant, bloom: Bloom): Basis =>
  bloom.from === 'observed' ? { kind: 'observed', years: bloom.years } : { kind: 'degree-days', plant: id };

const shiftFor = (bloom: Bloom, { laterByDays, fallLaterByDays, fallFrom }: NonNullable<BloomPlace['like']>): number =>
  fallFrom !== undefined && daysApart(fallFrom, bloom.middle) > 0 ? fallLaterByDays : laterByDays;

function moved(bloom: Bloom & { basis: Basis }, days: number): Bloom & { basis: Basis } {
  const by = (day: MonthDay) => addMonthDays(day, days);
  const basis: Basis = days === 0 ? bloom.basis : { kind: 'shifted', days, of: bloom.basis };
  return { ...bloom, middle: by(bloom.middle), earliest: by(bloom.earliest), latest: by(bloom.latest), basis };
}
