/* Form of the syrup calculator. Sentences: text.en.ts. Mix: model.ts. Arithmetic: shared/feeding. */
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
import * as text from './text.en.ts';

defineCalculator<Mixed, SyrupFigures>('syrup-mix', {
  fields: {
    'sugar-parts': single(number(text.what.sugarParts)),
    'water-parts': single(number(text.what.waterParts)),
    by: choice(['weight', 'volume'], text.what.by),
    know: choice(['sugar', 'water', 'syrup'], text.what.know),
    amount: amountWithUnit(),
    unit: choice(amountUnits, text.what.unit),
    temperature: single(quantity(temperature, text.what.temperature)),
    'sugar-per-cup': single(quantity(smallWeight, text.what.cup)),
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
    put(result, 'brix', text.sugarByWeight(three(syrup.brix)), syrup.brix);
    put(result, 'density', densityWords(syrup.kgPerLitre, units), syrup.kgPerLitre);
    put(result, 'sugar-per-l', text.sugarStrength(strengthWords(syrup.sugarKgPerLitre, units)), syrup.sugarKgPerLitre);
    const { graining } = syrup;
    const least = graining.state === 'below' ? graining.leastC : undefined;
    const most = 'mostC' in graining ? graining.mostC : undefined;
    put(result, 'grains-below-least', least === undefined ? '' : temperatureWords(least, units), least);
    put(
      result,
      'grains-below-most',
      least === undefined || most === undefined ? text.grainingWords(graining, units) : text.toMost(temperatureWords(most, units)),
      most,
    );
    show(result, 'graining', least === undefined ? '' : text.between);
    show(result, 'sum', text.sumWords(mixed, syrup, units));
    draw(result.querySelector<SVGElement>('svg.chart')!, drawGraining(graining, mixed.temperature, units));
    const isThin = syrup.brix < 60;
    return {
      headline: text.headline(syrup, units),
      more: text.kitchenWords(mixed, syrup, units),
      asked: text.questionWords(mixed),
      next: {
        kind: graining.state === 'cannot-all-dissolve' ? 'cannot-dissolve' : isThin ? 'thin' : 'thick',
        says: graining.state === 'cannot-all-dissolve' ? text.useMoreWater : text.feedInside,
        // Three days: know-how/spoiled-syrup, common practice, no source.
        again: text.nextLook(dayFromToday(3)),
      },
    } satisfies Answer<NextKind>;
  },
});

function faultOf(reason: MixReason, form: HTMLFormElement, units: System): FormError {
  const boxes = {
    'no-sugar': 'sugar-parts',
    'no-water': 'water-parts',
    'no-amount': 'amount',
    'too-much': 'amount',
    'temperature-out-of-range': 'temperature',
    'impossible-cup': 'sugar-per-cup',
    'too-thick': 'sugar-parts',
  };
  return { box: boxOf(form, boxes[reason]), words: text.faultWords(reason, units) };
}

/** The amount. A typed unit is selected in the list of units. */
function amountWithUnit(): Field<number> {
  const plain = number(text.what.amount);
  const words = amountUnits.flatMap((unit) => unitWords[unit]);
  const kind: Kind<number> = {
    ...plain,
    read: (typed) => {
      const read = readTypedNumber(typed, words);
      return read.ok ? ok(read.value) : read;
    },
    says: (refused, typed, units) =>
      refused.reason === 'unknown-unit' && /gal|pint|pt|taza|cuarto/i.test(refused.text ?? '')
        ? text.whichUnit(refused.text ?? '')
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
