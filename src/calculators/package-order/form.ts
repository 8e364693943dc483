/* Form of the package order. Sentences: text.en.ts. Terms: model.ts. Arithmetic: shared/packages. */
import { formatNumber, toDataValue, withoutZeros } from '../../../shared/numbers/show-number.ts';
import type { OrderTotals, PackageOrder } from '../../../shared/packages/order.ts';
import { kitchenVolume } from '../../../shared/units/kitchen.ts';
import { litresToUsGallons } from '../../../shared/units/volume.ts';
import { defineCalculator, type Answer, type Place } from '../form/calculator.ts';
import { boxOf } from '../form/field.ts';
import { count, number, optional, quantity } from '../form/kind.ts';
import { make, makeOutput } from '../form/make.ts';
import { put, show } from '../form/outputs.ts';
import { inRow } from '../form/rows.en.ts';
import { rows } from '../form/rows.ts';
import { single } from '../form/single.ts';
import { inPercent } from '../form/typed-units.ts';
import { canVolume, packageWeight, perWeight } from '../form/units.ts';
import { three } from '../form/measures.ts';
import { inUnits, reckon, weightOf, whole, type Ordered, type OrderFigures } from './model.ts';
import type { NextKind } from './next.ts';
import * as words from './text.en.ts';

const same = (value: number): number => value;
const columns = {
  packages: count(words.what.packages),
  pounds: quantity(packageWeight, words.what.pounds),
};

defineCalculator<Ordered, OrderFigures>('package-order', {
  fields: {
    lines: orderLines(),
    allowance: single(optional(number(words.what.allowance, inPercent))),
    hours: single(optional(number(words.what.hours, { h: same, hour: same, hours: same, hora: same, horas: same }))),
    'bees-per-pound': single(quantity(perWeight, words.what.beesPer)),
    'spare-queens': single(count(words.what.spare)),
    'cage-lb': single(optional(quantity(packageWeight, words.what.cage))),
    'can-lb': single(optional(quantity(packageWeight, words.what.can))),
    'syrup-l-each': single(optional(quantity(canVolume, words.what.syrup))),
  },
  work: (ordered, place) => {
    const order = reckon(ordered);
    if (!order.ok) {
      const [name, says] = words.faultWords(order.reason, ordered, place.figures.units);
      const many = ordered.lines.length > 1 && order.row !== undefined;
      return [{ box: boxOf(place.form, name, many ? order.row! - 1 : 0), words: many ? inRow(words.line, order.row!, says) : says }];
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
    more: syrupLitres ? words.syrupInCans(kitchenVolume(syrupLitres, figures.units) ?? '') : '',
    asked: words.questionWords(ordered, figures.units),
    next: {
      kind: lacks ? 'ask-supplier' : 'complete',
      says: lacks ? words.askForNumbers : words.printSheet,
      hazards: ['driving'],
      again: words.nextCheck,
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
    word: words.line,
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
  put(result, 'net-lb', weightOf(all.netPounds, units), all.netPounds);
  put(result, 'bees', words.beesWords(all.bees), all.bees);
  put(result, 'queens', words.queensWords(all, ordered['spare-queens']), all.queens);
  put(result, 'shake-lb', all.shakePounds === undefined ? words.askSupplier : weightOf(all.shakePounds, units), all.shakePounds);
  put(result, 'gross-lb', all.grossPounds === undefined ? words.askSupplier : weightOf(all.grossPounds, units), all.grossPounds);
  put(result, 'syrup-l', words.syrupWords(all, units), all.syrupLitres);
  show(result, 'road', words.roadWords(ordered, units));
  show(result, 'sheets', words.sheetsWords(order, figures));
  show(result, 'sum', words.sumWords(ordered, order, units));
}

function showLines({ lines }: PackageOrder, { result, figures: { units } }: Place<OrderFigures>): void {
  const trimmed = (value: number): string => withoutZeros(formatNumber(value, { places: 2 }));
  const weight = (pounds: number): string => (units === 'us' ? trimmed(pounds) : three(inUnits(pounds, units)));
  const volume = (litres: number): string => three(units === 'us' ? litresToUsGallons(litres) : litres);
  const cell = (name: string, value: number | undefined, shown: (value: number) => string = trimmed) =>
    make('td', {}, value === undefined ? makeOutput(name, '–') : makeOutput(name, shown(value), toDataValue(value)));
  result.querySelector('tbody')!.replaceChildren(
    ...lines.map((line: PackageOrder['lines'][number] & OrderTotals, at) =>
      make('tr', { 'data-line': String(at + 1) },
        make('th', { scope: 'row' }, `${whole(line.count)} × ${weight(line.pounds)} ${units === 'us' ? 'lb' : 'kg'}`),
        cell('net-lb', line.netPounds, weight),
        cell('shake-lb', line.shakePounds, weight),
        cell('gross-lb', line.grossPounds, weight),
        cell('bees', line.bees, whole),
        cell('queens', line.queens, whole),
        cell('syrup-l', line.syrupLitres, volume),
      )),
  ); // prettier-ignore
}
