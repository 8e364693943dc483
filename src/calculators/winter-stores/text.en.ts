/* Words of the winter stores. */
import type { StoreMix } from '../../../shared/feeding/stores.ts';
import { exactNumber, formatNumber } from '../../../shared/numbers/show-number.ts';
import { kitchenVolumes, kitchenWeight } from '../../../shared/units/kitchen.ts';
import { kilogramsToPounds } from '../../../shared/units/weight.ts';
import { spanWords, strengthAlone, three, volumeAlone, weightAlone, type System } from '../form/measures.ts';
import { frames, type Frame, type Hive, type HiveReason, type Stores, type StoresFigures } from './model.ts';

export const fields = {
  onScale: 'The hive on a scale',
  fillThis: { us: 'Fill this, or the frames below. You can type 59 kg.', metric: 'Fill this, or the frames below. You can type 130 lb.' },
  whole: 'Whole hive',
  empty: 'Empty hive',
  orFrames: 'Or frames full of honey',
  halves: 'Count two half-full frames as one. Halves are fine: 5½.',
  deep: 'Deep',
  medium: 'Medium',
  shallow: 'Shallow',
  wanted: 'Stores wanted',
  noTarget: 'The club has no figure. Ask, then write yours.',
  ofClub: 'This is the club’s figure. You can change it.',
  mix: 'Syrup to feed, sugar first',
};

/** What to write or to choose, as in "Choose a mix." */
export const what = {
  whole: { us: 'what the whole hive weighs, such as 130', metric: 'what the whole hive weighs, such as 59' },
  empty: {
    us: 'what the hive weighs without bees and stores, such as 80',
    metric: 'what the hive weighs without bees and stores, such as 36',
  },
  target: { us: 'the stores wanted, such as 60', metric: 'the stores wanted, such as 27' },
  frames: {
    deep: 'how many deep frames of honey there are, such as 5 or 5½',
    medium: 'how many medium frames of honey there are, such as 5 or 5½',
    shallow: 'how many shallow frames of honey there are, such as 5 or 5½',
  },
  mix: 'a mix',
};

/** A mix has no fault of its own, because every one in the list is possible. */
export const faultWords = (reason: HiveReason, units: System): string | undefined => {
  const most = units === 'us' ? '2,200 lb' : '1,000 kg';
  const faults: Partial<Record<HiveReason, string>> = {
    'nothing-given': 'Write what the hive weighs, or how many frames of honey there are.',
    'both-ways': 'Write the weights or the frames, not both. Empty the others.',
    'no-gross': `Write ${what.whole[units]}.`,
    'no-empty': `Write ${what.empty[units]}.`,
    'impossible-weight': `A hive weighs from 0 to ${most}.`,
    'empty-heavier-than-gross': 'The empty hive cannot weigh more than the whole.',
    'impossible-frames': 'Frames are from 0 to 100.',
    'no-target': `The stores wanted must be more than 0 and at most ${most}.`,
  };
  return faults[reason];
};

export const noFigure = 'No figure for this club.';
export const noneNeeded = 'None needed';
export const nothing = 'Nothing';
/** After the least amount. */
export const toMost = (most: string): string => `to ${most}`;
export const verdicts = { short: 'Short', enough: 'Enough' };

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
    `${inUnits(shortKg)} × ${exactNumber(feeding.sugarShareOfStores)} ÷ ${formatNumber(efficiency, { places: 2 })} = ${weight(kg)} of sugar`;
  return `${now} ${lacks} If all that is fed is stored: ${sugar(feeding.efficiencyMost, feed.sugarKgLeast)}. By the rule of practice: ${sugar(feeding.efficiencyLeast, feed.sugarKgMost)}. Syrup of ${mixNames[hive.mix]} holds ${strengthAlone(feed.sugarKgLeast / feed.syrupLitresLeast, units)}.`;
}

function frameWords(hive: Hive, { frameKg, units }: StoresFigures): string {
  const each = (kind: Frame): string => (frameKg[kind] === null ? 'no figure' : weightAlone(frameKg[kind], units));
  return frames.flatMap((kind) => (hive[kind] ? [`${three(hive[kind])} ${kind} × ${each(kind)}`] : [])).join(' + ') || '0 frames';
}

export const lateForSyrup = 'It is late for syrup here. Bees that are short now need dry sugar or fondant above the cluster.';
/** `when` is a day with its place and its basis. */
export const allBy = (when: string): string => `All of it must be in the hive by ${when}`;
export const weighBefore = (when: string): string => `Weigh again before ${when}`;
export const nextLook = (day: string): string => `Next look: ${day}.`;

export const outputs = {
  now: 'Stores now',
  short: 'Short of what is wanted',
  sugar: 'Sugar to feed',
  syrup: 'As syrup',
  fedBy: 'Fed by',
};
export const chartLabel =
  'A bar of the stores that are there, then of what is short, up to the dashed line of what is wanted. The same numbers stand below.';
export const wanted = 'wanted';

export const stepByStep = 'The example step by step, and a table';
export const exampleFrames = '5 deep and 4 medium frames of honey.';
export const makesUp = 'What makes up for a shortfall';
export const table = { short: 'Short', sugar: 'Sugar', syrup: 'As syrup of 2 to 1 by weight' };

export const basis =
  'Stores are sugar with a little water: {share} of their weight is sugar. The least holds if bees store all the sugar they are fed. The most is the rule of practice, where a part is eaten on the way.';
export const checks = [
  'Honey in a full frame: deep {deep}, medium {medium}, shallow {shallow}.',
  'A check from print: 10 kg (22 lb) short took {swiss} of 3 to 2 syrup.',
  'Another: a US gallon of 2 to 1 adds {gallon}, against {ideal} at best.',
];
export const others = {
  heading: 'Stores other groups use',
  theyDiffer: 'They differ, because winters do. The club follows {target}.',
  /** A place and who says so. */
  row: (place: string, source: string): string => `${place}: {stores}. ${source}.`,
};
export const limits = [
  'A scale weighs bees, pollen and wax too. By weight the stores come out too high.',
  'A frame that looks full may not be. Count two half frames as one.',
  'Cold or late feeding stores less than the rule of practice: feed early.',
  'The last day for syrup: {day}',
  'Near {cold} by day, it is too late to begin.',
  'Give no syrup while boxes for harvest are on.',
  'White sugar only. Feed inside the hive, in the evening, with a small entrance: syrup brings robbers.',
];
export const theWork = 'The work itself: {lists}.';
