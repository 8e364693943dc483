/* The sentences of the package order. */
import { formatNumber, toDataValue } from '../../../shared/numbers/show-number.ts';
import type { OrderReason, OrderTotals, PackageOrder } from '../../../shared/packages/order.ts';
import { poundsToKilograms } from '../../../shared/units/weight.ts';
import { three, volumeWords, weightWords, type System } from '../parts/measures.ts';
import { longestHours, type Ordered, type OrderFigures } from './reckon.ts';

export const whole = (value: number): string => formatNumber(value, { places: 0 });
export const weightOf = (pounds: number, units: System): string => weightWords(poundsToKilograms(pounds), units);

/** What stands where the supplier's number is lacking. */
export const askSupplier = 'Ask the supplier.';

export function packagesWords(packages: number): string {
  return `${whole(packages)} ${packages === 1 ? 'package' : 'packages'}`;
}

export function headline({ all }: PackageOrder, { units }: OrderFigures): string {
  return `${packagesWords(all.packages)}: ${weightOf(all.netPounds, units)} of bees, about ${whole(all.bees)}.`;
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

export function roadWords({ hours, allowance, 'bees-per-pound': perPound }: Ordered): string {
  const bees = `Bees are reckoned at ${whole(perPound)} to the pound. `;
  const road = hours === undefined ? '' : `About ${three(hours)} ${hours === 1 ? 'hour' : 'hours'} on the road. `;
  return (
    bees +
    road +
    (allowance === undefined
      ? 'How much is put in over the label for deaths on the way: ask the supplier.'
      : `Put in over the label for deaths on the way: ${toDataValue(allowance)} %.`)
  );
}

/** How many sheets have a line for everyone, if each takes one. */
export function sheetsWords({ all }: PackageOrder, { members }: OrderFigures): string {
  const sheets = Math.ceil(all.packages / members);
  return sheets === 1
    ? `One sheet has lines for ${members} members.`
    : `A sheet has lines for ${members} members. If each takes one package, print ${whole(sheets)} sheets.`;
}

/** The sum with its numbers put in. */
export function sumWords(ordered: Ordered, { all }: PackageOrder): string {
  const plain = (value: number): string => toDataValue(Number(value.toPrecision(6)));
  const { lines, allowance, 'cage-lb': cage, 'can-lb': can, 'syrup-l-each': syrup, 'spare-queens': spare } = ordered;
  const net = `${lines.map(({ count, pounds }) => `${whole(count)} × ${plain(pounds)} lb`).join(' + ')} = ${plain(all.netPounds)} lb.`;
  return [
    `Net: ${net}`,
    `Bees: ${plain(all.netPounds)} × ${plain(ordered['bees-per-pound'])}.`,
    ...(all.shakePounds === undefined
      ? []
      : [`Put in: ${plain(all.netPounds)} × (1 + ${plain(allowance!)} ÷ 100) = ${plain(all.shakePounds)} lb.`]),
    ...(all.grossPounds === undefined
      ? []
      : [`Gross: ${plain(all.netPounds)} + ${whole(all.packages)} × (${plain(cage!)} + ${plain(can!)}) = ${plain(all.grossPounds)} lb.`]),
    ...(spare === 0 ? [] : [`Queens: ${whole(all.packages)} + ${whole(spare)}.`]),
    ...(all.syrupLitres === undefined ? [] : [`Syrup: ${whole(all.packages)} × ${plain(syrup!)} L.`]),
  ].join(' ');
}

/** The box to mend, and what to write in it. */
export function faultWords(reason: OrderReason | 'impossible-hours', ordered: Ordered): readonly [box: string, words: string] {
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
        ? ['pounds', 'A package weighs at most 20 lb.']
        : ['packages', 'An order has at most 10,000 packages.'];
    case 'no-bees-per-pound':
      return ['bees-per-pound', 'The bees in a pound are more than 0 and at most 10,000.'];
    case 'impossible-spare-queens':
      return ['spare-queens', 'Spare queens are from 0 to 10,000.'];
    case 'impossible-allowance':
      return ['allowance', 'It lies from 0 to 100 %.'];
    case 'impossible-cage':
      return ['cage-lb', 'An empty cage weighs from 0 to 20 lb.'];
    case 'impossible-can':
      return ['can-lb', 'A can weighs from 0 to 20 lb.'];
    case 'impossible-syrup':
      return ['syrup-l-each', 'A can holds from 0 to 20 L.'];
    case 'impossible-hours':
      return ['hours', `The hours are from 0 to ${longestHours}.`];
  }
}
