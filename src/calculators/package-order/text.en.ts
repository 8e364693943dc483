/* Words of the package order. */
import { toDataValue } from '../../../shared/numbers/show-number.ts';
import type { OrderReason, OrderTotals, PackageOrder } from '../../../shared/packages/order.ts';
import { converted, three, volumeWords, type System } from '../form/measures.ts';
import { canVolume, perWeight } from '../form/units.ts';
import { inUnits, longestHours, weightOf, whole, type Ordered, type OrderFigures } from './model.ts';

export const fields = {
  ordered: 'What is ordered',
  oneLine: 'One line for each weight.',
  firstLine: 'Line 1',
  packages: 'Packages',
  weightOfOne: 'Weight of one',
  removeFirst: 'Remove line 1',
  addLine: 'Add a line',
  pasteList: 'Paste a list',
  fromSpreadsheet: { us: 'From a spreadsheet: packages, pounds', metric: 'From a spreadsheet: packages, kilograms' },
  listHint: 'One line each, such as 10 3. Separate the columns with a tab, comma or space.',
  beesPer: { us: 'Bees in a pound', metric: 'Bees in a kilogram' },
  spare: 'Spare queens',
  supplier: 'Ask the supplier',
  canBeEmpty: 'You can leave these empty. Then those results are left out.',
  allowance: 'Over label, %',
  forDeaths: 'Put in for deaths.',
  hours: 'Hours by road',
  sheetOnly: 'For the sheet only.',
  cage: 'Empty cage',
  withQueenCage: 'With its queen cage.',
  can: 'Full can',
  withSyrup: 'With its syrup.',
  syrup: 'Syrup in a can',
  syrupUnit: { us: 'US quarts', metric: 'L' },
  youCanType: { us: 'You can type ½ US gal.', metric: 'You can type 750 mL.' },
};

/** What to write, as in "Write how many packages." */
export const what = {
  packages: 'how many packages',
  pounds: { us: 'the weight of one, such as 3', metric: 'the weight of one, such as 1.36' },
  allowance: 'what is put in over the label, such as 10',
  hours: 'the hours on the road, such as 5',
  beesPer: { us: 'how many bees a pound holds, such as 3500', metric: 'how many bees a kilogram holds, such as 7700' },
  spare: 'how many spare queens, or 0',
  cage: { us: 'what an empty cage weighs, such as 1.5', metric: 'what an empty cage weighs, such as 0.7' },
  can: { us: 'what a full can weighs, such as 3', metric: 'what a full can weighs, such as 1.4' },
  syrup: { us: 'the syrup of one can, such as 1', metric: 'the syrup of one can, such as 1' },
};
/** As in "Line 2". */
export const line = 'Line';

/** The text where the supplier's number is missing. */
export const askSupplier = 'Ask the supplier.';

const packagesWords = (packages: number): string => `${whole(packages)} ${packages === 1 ? 'package' : 'packages'}`;

export function headline({ all }: PackageOrder, { units }: OrderFigures): string {
  return `${packagesWords(all.packages)}: ${weightOf(all.netPounds, units)} of bees, about ${whole(all.bees)}.`;
}

/** What was asked, in one line. */
export function questionWords({ lines }: Ordered, units: System): string {
  const unit = units === 'us' ? 'lb' : 'kg';
  const shown = lines.slice(0, 4).map(({ count, pounds }) => `${whole(count)} × ${three(inUnits(pounds, units))} ${unit}`);
  return `${shown.join(' and ')}${lines.length > 4 ? ` and ${lines.length - 4} more lines` : ''}`;
}

export const beesWords = (bees: number): string => `about ${whole(bees)}`;

export function queensWords({ queens }: OrderTotals, spare: number): string {
  return spare === 0 ? whole(queens) : `${whole(queens)}, ${whole(spare)} of them spare`;
}

export function syrupWords({ syrupLitres }: OrderTotals, units: System): string {
  return syrupLitres === undefined ? askSupplier : volumeWords(syrupLitres, units);
}

export function roadWords({ hours, allowance, 'bees-per-pound': perPound }: Ordered, units: System): string {
  const bees = `Bees are reckoned at ${converted(perWeight.boxes[units].fromFixed(perPound))} to the ${units === 'us' ? 'pound' : 'kilogram'}. `;
  const road = hours === undefined ? '' : `About ${three(hours)} ${hours === 1 ? 'hour' : 'hours'} on the road. `;
  return (
    bees +
    road +
    (allowance === undefined
      ? 'How much is put in over the label for deaths on the way: ask the supplier.'
      : `Put in over the label for deaths on the way: ${toDataValue(allowance)} %.`)
  );
}

/** How many sheets have a line for every member, if each takes one. */
export function sheetsWords({ all }: PackageOrder, { members }: OrderFigures): string {
  const sheets = Math.ceil(all.packages / members);
  return sheets === 1
    ? `One sheet has lines for ${members} members.`
    : `A sheet has lines for ${members} members. If each takes one package, print ${whole(sheets)} sheets.`;
}

/** The calculation with its numbers. */
export function sumWords(ordered: Ordered, { all }: PackageOrder, units: System): string {
  const plain = (value: number): string => toDataValue(Number(value.toPrecision(6)));
  const weight = (pounds: number): string => (units === 'us' ? plain(pounds) : three(inUnits(pounds, units)));
  const [short, volume] = units === 'us' ? ['lb', 'US qt'] : ['kg', 'L'];
  const { lines, allowance, 'cage-lb': cage, 'can-lb': can, 'syrup-l-each': syrup, 'spare-queens': spare } = ordered;
  const net = `${lines.map(({ count, pounds }) => `${whole(count)} × ${weight(pounds)} ${short}`).join(' + ')} = ${weight(all.netPounds)} ${short}.`;
  return [
    `Net: ${net}`,
    `Bees: ${weight(all.netPounds)} × ${units === 'us' ? plain(ordered['bees-per-pound']) : converted(perWeight.boxes.metric.fromFixed(ordered['bees-per-pound']))}.`,
    ...(all.shakePounds === undefined
      ? []
      : [`Put in: ${weight(all.netPounds)} × (1 + ${plain(allowance!)} ÷ 100) = ${weight(all.shakePounds)} ${short}.`]),
    ...(all.grossPounds === undefined
      ? []
      : [
          `Gross: ${weight(all.netPounds)} + ${whole(all.packages)} × (${weight(cage!)} + ${weight(can!)}) = ${weight(all.grossPounds)} ${short}.`,
        ]),
    ...(spare === 0 ? [] : [`Queens: ${whole(all.packages)} + ${whole(spare)}.`]),
    ...(all.syrupLitres === undefined
      ? []
      : [`Syrup: ${whole(all.packages)} × ${three(canVolume.boxes[units].fromFixed(syrup!))} ${volume}.`]),
  ].join(' ');
}

/** The box to correct, and what to write in it. */
export function faultWords(
  reason: OrderReason | 'impossible-hours',
  ordered: Ordered,
  units: System,
): readonly [box: string, words: string] {
  const twenty = units === 'us' ? '20 lb' : '9 kg';
  switch (reason) {
    case 'no-lines':
    case 'no-count':
      return ['packages', 'Write how many packages, 1 or more.'];
    case 'count-not-whole':
      return ['packages', 'Write whole packages.'];
    case 'no-weight':
      return ['pounds', 'The weight must be more than 0.'];
    case 'too-much':
      return ordered.lines.some(({ pounds }) => pounds > 20)
        ? ['pounds', `A package weighs at most ${twenty}.`]
        : ['packages', 'An order has at most 10,000 packages.'];
    case 'no-bees-per-pound':
      return [
        'bees-per-pound',
        units === 'us'
          ? 'The bees in a pound are more than 0 and at most 10,000.'
          : 'The bees in a kilogram are more than 0 and at most 22,000.',
      ];
    case 'impossible-spare-queens':
      return ['spare-queens', 'Spare queens are from 0 to 10,000.'];
    case 'impossible-allowance':
      return ['allowance', 'It lies from 0 to 100 %.'];
    case 'impossible-cage':
      return ['cage-lb', `An empty cage weighs from 0 to ${twenty}.`];
    case 'impossible-can':
      return ['can-lb', `A can weighs from 0 to ${twenty}.`];
    case 'impossible-syrup':
      return ['syrup-l-each', `A can holds from 0 to ${units === 'us' ? '21 US quarts' : '20 L'}.`];
    case 'impossible-hours':
      return ['hours', `The hours are from 0 to ${longestHours}.`];
  }
}

export const syrupInCans = (amount: string): string => `Syrup in the cans: ${amount}.`;
export const askForNumbers = 'Ask the supplier for the numbers that are missing. Get them in writing.';
export const printSheet = 'Print the pick-up sheet, and give each driver one.';
export const nextCheck = 'Next check: on the day of pick-up, before you leave with the bees.';

export const outputs = {
  net: 'Net, on the labels',
  putIn: 'To be put in',
  gross: 'Gross, to carry',
  bees: 'Bees',
  queens: 'Queens',
  syrup: 'Syrup in the cans',
};
export const table = {
  heading: 'Line by line',
  line: 'Line',
  net: 'Net',
  putIn: 'Put in',
  gross: 'Gross',
  bees: 'Bees',
  queens: 'Queens',
  syrup: { us: 'Syrup, US gal', metric: 'Syrup, L' },
  packages: 'Packages',
};
export const sheet = {
  blanks: 'Pick-up sheet. Day, hour: ________________ Place: __________________ Driver: __________________',
  columns: ['Member', 'Packages', 'Weight, full', 'Queen walks', 'Dead, depth', 'Signed'],
  makes: '“Print” makes the pick-up sheet: these numbers, a line for each member, and the lists below.',
};

export const stepByStep = 'The example step by step, and a table';
export const exampleWords = (three: string, two: string): string =>
  `Ten packages of ${three} and four of ${two}; the supplier’s numbers are made up.`;
export const packagesOf = (weight: string): string => `Packages of ${weight}`;
export const others = 'Others reckon {some} or {more}. Fed full, they are fewer: {fed}.';
export const theWork = 'The work itself: {lists}.';

export const pickUp = {
  title: 'On the road, and on arrival',
  onRoad: 'On the road',
  road: [
    'Cool: under {low} or over {high} a queen’s stored sperm can die.',
    'Aired: nothing on the screens, a hand’s width between packages, a window open.',
    'Upright and strapped, the can on top. It has about {holes} small holes.',
    'In the shade. Do not leave them in a closed car.',
    'Until they are hived: dark, quiet and aired, at {hold}, for {days} at most. Others hold them near {others}: ask the supplier.',
  ],
  onArrival: 'Look at each on arrival',
  arrival: [
    'The bees hang in one cluster and are dry, not spread over the floor.',
    'The queen walks in her cage. Ask to see her.',
    'The can is heavy and does not drip.',
    'Dead bees on the floor: from {depth} deep, photograph them with a ruler.',
    'Write down the day they were shaken.',
    'Weigh a few, full, and write that beside the name.',
  ],
  call: (name: string): string => `**Not right? Say so before you leave, and call:** ${name}, {number}.`,
  write: (name: string): string => `**Not right? Say so before you leave, and write to:** ${name}, {number}.`,
  tell: '**Not right? Say so before you leave, and tell the supplier.**',
};
export const limits = [
  'How many bees are in yours. A pound holds more hungry bees than full ones.',
  'How many die on the way. No study was seen, so the measure over the label is the supplier’s to name.',
  'Whether bees are well. Packages came with {mites} mites when sampled.',
  'What papers bees need on their way. Ask the inspector.',
];
