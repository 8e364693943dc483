/* Sentences of the winter stores. */
import { storeMixes, type StoreMix } from '../../../shared/feeding/stores.ts';
import { formatNumber, plainDecimal } from '../../../shared/numbers/show-number.ts';
import { kitchenVolumes, kitchenWeight } from '../../../shared/units/kitchen.ts';
import { kilogramsToPounds } from '../../../shared/units/weight.ts';
import { strengthWords, three, volumeAlone, weightAlone, type System } from '../form/measures.ts';
import { frames, type Hive, type Stores, type StoresFigures } from './model.ts';

export const noFigure = 'No figure for this club.';

export const mixNames: Readonly<Record<StoreMix, string>> = {
  '1:1-weight': '1 to 1 by weight',
  '3:2-weight': '3 to 2 by weight',
  '2:1-weight': '2 to 1 by weight',
  '2:1-volume': '2 to 1 by volume',
  '1kg-630ml': '1 kg to 630 mL',
};

export function headline(hive: Hive, { storesKg, shortKg, feed }: Stores, { units }: StoresFigures): string {
  if (storesKg === undefined || shortKg === undefined) return 'There is no figure for the honey in these frames.';
  const held = weightAlone(storesKg, units);
  if (shortKg === 0) return `${held} of stores: enough for the ${weightAlone(hive['target-kg'], units)} wanted.`;
  const short = `${weightAlone(shortKg, units)} short.`;
  return feed
    ? `${short} That is ${spanWords(feed.syrupLitresLeast, feed.syrupLitresMost, (litres) => volumeAlone(litres, units))} of syrup.`
    : short;
}

/** What was asked, in one line. */
export function questionWords(hive: Hive, units: System): string {
  const now =
    hive['gross-kg'] !== undefined && hive['empty-kg'] !== undefined
      ? `${weightAlone(hive['gross-kg'], units)} whole, ${weightAlone(hive['empty-kg'], units)} empty`
      : `${frames.flatMap((kind) => (hive[kind] ? [`${three(hive[kind])} ${kind}`] : [])).join(', ') || '0'} frames of honey`;
  return `${now}; ${weightAlone(hive['target-kg'], units)} wanted; syrup ${mixNames[hive.mix]}`;
}

/** The syrup and the sugar as a person measures them. */
export function kitchenWords({ shortKg, feed }: Stores, { units }: StoresFigures): string {
  const syrup = feed && shortKg !== 0 ? kitchenVolumes(feed.syrupLitresLeast, feed.syrupLitresMost, units) : undefined;
  const sugar = feed && kitchenWeight(feed.sugarKgMost, units);
  return syrup && sugar ? `To measure: ${syrup} of syrup. Have ${sugar} of sugar at hand.` : '';
}

/** "1.1 to 1.4 US gal". */
export function spanWords(least: number, most: number, words: (value: number) => string): string {
  return `${/^[\d.,]+/.exec(words(least))![0]} to ${words(most)}`;
}

/** The calculation with its numbers, in the club's own system. */
export function sumWords(hive: Hive, stores: Stores, figures: StoresFigures): string {
  const { units, feeding } = figures;
  const weight = (kg: number) => weightAlone(kg, units);
  const inUnits = (kg: number) => three(units === 'us' ? kilogramsToPounds(kg) : kg);
  const { storesKg, shortKg, feed } = stores;
  const held = storesKg === undefined ? 'no figure for this club' : weight(storesKg);
  const now =
    stores.from === 'weights'
      ? `${weight(hive['gross-kg']!)} − ${weight(hive['empty-kg']!)} = ${held}.`
      : `${frameWords(hive, figures)} = ${held}.`;
  if (shortKg === undefined) return now;
  const target = `${weight(hive['target-kg'])} wanted`;
  if (shortKg === 0) return `${now} ${target}: nothing is short.`;
  const lacks = `${target} − ${weight(storesKg!)} = ${weight(shortKg)} short.`;
  if (!feed || !feeding) return `${now} ${lacks} What bees store of the sugar they are fed: ${noFigure.toLowerCase()}`;
  const sugar = (efficiency: number, kg: number) =>
    `${inUnits(shortKg)} × ${plainDecimal(feeding.sugarShareOfStores)} ÷ ${formatNumber(efficiency, { places: 2 })} = ${weight(kg)} of sugar`;
  return `${now} ${lacks} If all that is fed is stored: ${sugar(feeding.efficiencyMost, feed.sugarKgLeast)}. By the rule of practice: ${sugar(feeding.efficiencyLeast, feed.sugarKgMost)}. Syrup of ${mixNames[hive.mix]} holds ${strengthIn(feed, units)}.`;
}

function frameWords(hive: Hive, { frameKg, units }: StoresFigures): string {
  return frames.flatMap((kind) => {
    const each = frameKg[kind];
    return hive[kind] === undefined || hive[kind] === 0 ? [] : [`${three(hive[kind])} ${kind} × ${each === null ? 'no figure' : weightAlone(each, units)}`];
  }).join(' + ') || '0 frames'; // prettier-ignore
}

function strengthIn({ sugarKgLeast, syrupLitresLeast }: NonNullable<Stores['feed']>, units: System): string {
  return strengthWords(sugarKgLeast / syrupLitresLeast, units).replace(/ \(.*/, '');
}

/** The syrup page with this sugar in its form. */
export function syrupAddress(mix: StoreMix, sugarKg: number, units: System): string {
  const { sugarParts, waterParts, by } = storeMixes[mix];
  const amount = Number((units === 'us' ? kilogramsToPounds(sugarKg) : sugarKg).toFixed(2));
  return `sugar-parts=${sugarParts}&water-parts=${waterParts}&by=${by === 'volume' ? by : 'weight'}&know=sugar&amount=${plainDecimal(amount)}&unit=${units === 'us' ? 'lb' : 'kg'}`;
}
