/* Form of the package order. Sentences: text.ts. Terms: model.ts. Arithmetic: shared/packages. */
import { formatNumber, toDataValue, withoutZeros } from '../../../shared/numbers/show-number.ts';
import type { OrderTotals, PackageOrder } from '../../../shared/packages/order.ts';
import { kitchenVolume } from '../../../shared/units/kitchen.ts';
import { litresToUsGallons } from '../../../shared/units/volume.ts';
import { defineCalculator, type Answer, type Place } from '../form/calculator.ts';
import { boxOf } from '../form/field.ts';
import { count, number, optional, quantity } from '../form/kind.ts';
import { make, makeOutput } from '../form/make.ts';
import { put, show } from '../form/outputs.ts';
import { rows } from '../form/rows.ts';
import { single } from '../form/single.ts';
import { inPercent } from '../form/typed-units.ts';
import { canVolume, packageWeight, perWeight } from '../form/units.ts';
import { three } from '../form/measures.ts';
import { reckon, type Ordered, type OrderFigures } from './model.ts';
import type { NextKind } from './next.ts';
import * as words from './text.ts';

const same = (value: number): number => value;
const columns = {
  packages: count('how many packages'),
  pounds: quantity(packageWeight, { us: 'the weight of one, such as 3', metric: 'the weight of one, such as 1.36' }),
};

defineCalculator<Ordered, OrderFigures>('package-order', {
  fields: {
    lines: orderLines(),
    allowance: single(optional(number('what is put in over the label, such as 10', inPercent))),
    hours: single(optional(number('the hours on the road, such as 5', { h: same, hour: same, hours: same }))),
    'bees-per-pound': single(
      quantity(perWeight, { us: 'how many bees a pound holds, such as 3500', metric: 'how many bees a kilogram holds, such as 7700' }),
    ),
    'spare-queens': single(count('how many spare queens, or 0')),
    'cage-lb': single(
      optional(quantity(packageWeight, { us: 'what an empty cage weighs, such as 1.5', metric: 'what an empty cage weighs, such as 0.7' })),
    ),
    'can-lb': single(
      optional(quantity(packageWeight, { us: 'what a full can weighs, such as 3', metric: 'what a full can weighs, such as 1.4' })),
    ),
    'syrup-l-each': single(
      optional(quantity(canVolume, { us: 'the syrup of one can, such as 1', metric: 'the syrup of one can, such as 1' })),
    ),
  },
  work: (ordered, place) => {
    const order = reckon(ordered);
    if (!order.ok) {
      const [name, says] = words.faultWords(order.reason, ordered, place.figures.units);
      const many = ordered.lines.length > 1 && order.row !== undefined;
      return [{ box: boxOf(place.form, name, many ? order.row! - 1 : 0), words: many ? `Line ${order.row}: ${says}` : says }];
    }
    showAll(ordered, order.value, place);
    showLines(order.value, place);
    return answerOf(ordered, order.value, place.figures);
  },
});

function answerOf(ordered: Ordered, order: PackageOrder, figures: OrderFigures): Answer<NextKind> {
  const lacks = order.all.shakePounds === undefined || order.all.grossPounds === undefined || order.all.syrupLitres === undefined;
  const { syrupLitres } = order.all;
  return {
    headline: words.headline(order, figures),
    more: syrupLitres ? `Syrup in the cans: ${kitchenVolume(syrupLitres, figures.units) ?? ''}.` : '',
    asked: words.questionWords(ordered, figures.units),
    next: {
      kind: lacks ? 'ask-supplier' : 'complete',
      says: lacks
        ? 'Ask the supplier for the numbers that are missing. Get them in writing.'
        : 'Print the pick-up sheet, and give each driver one.',
      hazards: ['driving'],
      again: 'Next check: on the day of pick-up, before you leave with the bees.',
      ...(syrupLitres
        ? { values: { syrup: `sugar-parts=1&water-parts=1&by=weight&know=syrup&amount=${toDataValue(syrupLitres)}&unit=L` } }
        : {}),
    },
  };
}

function orderLines() {
  const field = rows({
    columns,
    marks: ['x'],
    word: 'Line',
    most: 12,
    shape: { numbers: 2, whole: false, numberedNames: false },
    such: '10 3',
    like: '10x3',
  });
  return {
    ...field,
    read: (form: HTMLFormElement, name: string) => {
      const reading = field.read(form, name);
      return 'value' in reading
        ? { value: reading.value.map(({ packages, pounds }) => ({ count: packages, pounds })), address: reading.address }
        : reading;
    },
  };
}

function showAll(ordered: Ordered, order: PackageOrder, { result, figures }: Place<OrderFigures>): void {
  const { all } = order;
  const { units } = figures;
  put(result, 'net-lb', words.weightOf(all.netPounds, units), all.netPounds);
  put(result, 'bees', words.beesWords(all.bees), all.bees);
  put(result, 'queens', words.queensWords(all, ordered['spare-queens']), all.queens);
  put(result, 'shake-lb', all.shakePounds === undefined ? words.askSupplier : words.weightOf(all.shakePounds, units), all.shakePounds);
  put(result, 'gross-lb', all.grossPounds === undefined ? words.askSupplier : words.weightOf(all.grossPounds, units), all.grossPounds);
  put(result, 'syrup-l', words.syrupWords(all, units), all.syrupLitres);
  show(result, 'road', words.roadWords(ordered, units));
  show(result, 'sheets', words.sheetsWords(order, figures));
  show(result, 'sum', words.sumWords(ordered, order, units));
}

function showLines({ lines }: PackageOrder, { result, figures: { units } }: Place<OrderFigures>): void {
  const trimmed = (value: number): string => withoutZeros(formatNumber(value, { places: 2 }));
  const weight = (pounds: number): string => (units === 'us' ? trimmed(pounds) : three(words.inUnits(pounds, units)));
  const volume = (litres: number): string => three(units === 'us' ? litresToUsGallons(litres) : litres);
  const cell = (name: string, value: number | undefined, shown: (value: number) => string = trimmed) =>
    make('td', {}, value === undefined ? makeOutput(name, '–') : makeOutput(name, shown(value), toDataValue(value)));
  result.querySelector('tbody')!.replaceChildren(
    ...lines.map((line: PackageOrder['lines'][number] & OrderTotals, at) =>
      make('tr', { 'data-line': String(at + 1) },
        make('th', { scope: 'row' }, `${words.whole(line.count)} × ${weight(line.pounds)} ${units === 'us' ? 'lb' : 'kg'}`),
        cell('net-lb', line.netPounds, weight),
        cell('shake-lb', line.shakePounds, weight),
        cell('gross-lb', line.grossPounds, weight),
        cell('bees', line.bees, words.whole),
        cell('queens', line.queens, words.whole),
        cell('syrup-l', line.syrupLitres, volume),
      )),
  ); // prettier-ignore
}
