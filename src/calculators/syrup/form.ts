/* Form of the syrup calculator. Sentences: text.ts. Mix: model.ts. Arithmetic: shared/feeding. */
import type { MixReason } from '../../../shared/feeding/mix.ts';
import { readTypedNumber } from '../../../shared/numbers/typed-number.ts';
import { ok } from '../../../shared/result.ts';
import { unitNamed, unitWords } from '../../../shared/units/unit-names.ts';
import { defineCalculator, type Answer } from '../form/calculator.ts';
import { draw } from '../form/drawing.ts';
import { boxOf, type FormError, type Field } from '../form/field.ts';
import { number, quantity, type Kind } from '../form/kind.ts';
import { densityWords, strengthWords, temperatureWords, three, volumeWords, weightWords, type System } from '../form/measures.ts';
import { put, show } from '../form/outputs.ts';
import { choice, single } from '../form/single.ts';
import { dayFromToday } from '../form/today.ts';
import { smallWeight, systemOf, temperature } from '../form/units.ts';
import { drawGraining } from './chart.ts';
import { amountUnits, mix, type AmountUnit, type Mixed, type SyrupFigures } from './model.ts';
import type { NextKind } from './next.ts';
import { grainingWords, headline, kitchenWords, questionWords, sumWords } from './text.ts';

defineCalculator<Mixed, SyrupFigures>('syrup-mix', {
  fields: {
    'sugar-parts': single(number('the parts of sugar, such as 2')),
    'water-parts': single(number('the parts of water, such as 1')),
    by: choice(['weight', 'volume'], 'whether parts are by weight or by volume'),
    know: choice(['sugar', 'water', 'syrup'], 'what the amount is of'),
    amount: amountWithUnit(),
    unit: choice(amountUnits, 'a unit'),
    temperature: single(quantity(temperature, { us: 'the temperature, such as 68', metric: 'the temperature, such as 20' })),
    'sugar-per-cup': single(
      quantity(smallWeight, { us: 'the ounces of sugar in a US cup, such as 7', metric: 'the grams of sugar in a US cup, such as 200' }),
    ),
  },
  work: (mixed, { form, result, figures: { units } }) => {
    const mixture = mix(mixed);
    if (!mixture.ok) return [faultOf(mixture.reason, form, units)];
    const syrup = mixture.value;
    put(result, 'sugar-kg', weightWords(syrup.sugarKg, units), syrup.sugarKg);
    put(result, 'water-kg', weightWords(syrup.waterKg, units), syrup.waterKg);
    put(result, 'water-l', volumeWords(syrup.waterLitres, units), syrup.waterLitres);
    put(result, 'syrup-kg', weightWords(syrup.syrupKg, units), syrup.syrupKg);
    put(result, 'syrup-l', volumeWords(syrup.syrupLitres, units), syrup.syrupLitres);
    put(result, 'brix', `${three(syrup.brix)} % sugar by weight`, syrup.brix);
    put(result, 'density', densityWords(syrup.kgPerLitre, units), syrup.kgPerLitre);
    put(result, 'sugar-per-l', `Sugar: ${strengthWords(syrup.sugarKgPerLitre, units)}`, syrup.sugarKgPerLitre);
    const { graining } = syrup;
    const least = graining.state === 'below' ? graining.leastC : undefined;
    const most = 'mostC' in graining ? graining.mostC : undefined;
    put(result, 'grains-below-least', least === undefined ? '' : temperatureWords(least, units), least);
    put(
      result,
      'grains-below-most',
      least === undefined || most === undefined ? grainingWords(graining, units) : `to ${temperatureWords(most, units)}`,
      most,
    );
    show(result, 'graining', least === undefined ? '' : 'It may begin to grain somewhere between, and below.');
    show(result, 'sum', sumWords(mixed, syrup, units));
    draw(result.querySelector<SVGElement>('svg.chart')!, drawGraining(graining, mixed.temperature, units));
    const isThin = syrup.brix < 60;
    return {
      headline: headline(syrup, units),
      more: kitchenWords(mixed, syrup, units),
      asked: questionWords(mixed),
      next: {
        kind: graining.state === 'cannot-all-dissolve' ? 'cannot-dissolve' : isThin ? 'thin' : 'thick',
        says:
          graining.state === 'cannot-all-dissolve'
            ? 'Use more water. Two parts of sugar to one of water, by weight, is the thickest that people usually feed.'
            : 'Feed inside the hive, in the evening. Never while boxes for harvest are on.',
        // Three days: know-how/spoiled-syrup, common practice, no source.
        again: `Next look at the feeder: ${dayFromToday(3)}.`,
      },
    } satisfies Answer<NextKind>;
  },
});

function faultOf(reason: MixReason, form: HTMLFormElement, units: System): FormError {
  const us = units === 'us';
  const [name, words] = {
    'no-sugar': ['sugar-parts', 'The parts of sugar must be more than 0.'],
    'no-water': ['water-parts', 'The parts of water must be more than 0.'],
    'no-amount': ['amount', 'The amount must be more than 0.'],
    'too-much': ['amount', 'That is more than a million: too much to work with.'],
    'temperature-out-of-range': [
      'temperature',
      us ? 'The temperature must be from 32 to 140 °F.' : 'The temperature must be from 0 to 60 °C.',
    ],
    'impossible-cup': ['sugar-per-cup', `A US cup of sugar weighs more than 0 ${us ? 'oz and at most 13.2 oz' : 'g and at most 376 g'}.`],
    'too-thick': ['sugar-parts', 'With so much sugar to so little water there is no syrup: it would be over 85 % sugar.'],
  }[reason] as [string, string];
  return { box: boxOf(form, name), words };
}

/** The amount. A typed unit is selected in the list of units. */
function amountWithUnit(): Field<number> {
  const plain = number('how much there is, such as 5');
  const words = amountUnits.flatMap((unit) => unitWords[unit]);
  const kind: Kind<number> = {
    ...plain,
    read: (typed) => {
      const read = readTypedNumber(typed, words);
      return read.ok ? ok(read.value) : read;
    },
    says: (refused, typed, units) =>
      refused.reason === 'unknown-unit' && /gal|pint|pt/i.test(refused.text ?? '')
        ? `Which “${refused.text}”: US or imperial? Choose it in the list of units.`
        : plain.says(refused, typed, units),
  };
  const field = single(kind);
  return {
    ...field,
    /** A typed amount keeps the unit selected beside it. An empty box gets the usual one. */
    turn: (form, name) => () => {
      if (boxOf(form, name).value.trim() === '') boxOf(form, 'unit').value = systemOf(form) === 'us' ? 'lb' : 'kg';
    },
    read: (form, name) => {
      const typed = readTypedNumber(boxOf(form, name).value, words);
      const unit = typed.ok && typed.unit ? unitNamed(typed.unit) : undefined;
      if (unit && (amountUnits as string[]).includes(unit)) boxOf(form, 'unit').value = unit satisfies string as AmountUnit;
      return field.read(form, name);
    },
  };
}
