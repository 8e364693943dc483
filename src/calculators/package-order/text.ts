/* Sentences of the package order. */
import { formatNumber, toDataValue } from '../../../shared/numbers/show-number.ts';
import type { OrderReason, OrderTotals, PackageOrder } from '../../../shared/packages/order.ts';
import { poundsToKilograms } from '../../../shared/units/weight.ts';
import { converted, three, volumeWords, weightWords, type System } from '../form/measures.ts';
import { canVolume, perWeight } from '../form/units.ts';
import { longestHours, type Ordered, type OrderFigures } from './model.ts';

export const whole = (value: number): string => formatNumber(value, { places: 0 });
/** Pounds as a number in the form's units. */
export const inUnits = (pounds: number, units: System): number => (units === 'us' ? pounds : poundsToKilograms(pounds));
export const weightOf = (pounds: number, units: System): string => weightWords(poundsToKilograms(pounds), units);

/** The text where the supplier's number is missing. */
export const askSupplier = 'Ask the supplier.';

export function packagesWords(packages: number): string {
  return `${whole(packages)} ${packages === 1 ? 'package' : 'packages'}`;
}

export function headline({ all }: PackageOrder, { units }: OrderFigures): string {
  return `${packagesWords(all.packages)}: ${weightOf(all.netPounds, units)} of bees, about ${whole(all.bees)}.`;
}

/** What was asked, in one line. */
export function questionWords({ lines }: Ordered, units: System): string {
  const unit = units === 'us' ? 'lb' : 'kg';
  const shown = lines.slice(0, 4).map(({ count, pounds }) => `${whole(count)} × ${three(inUnits(pounds, units))} ${unit}`);
  return `${shown.join(' and ')}${lines.length > 4 ? ` and ${lines.length - 4} more lines` : ''}`;
}

export function beesWords(bees: number): string {
  return `about ${whole(bees)}`;
}

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
