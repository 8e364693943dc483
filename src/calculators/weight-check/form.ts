/* Form of the weight check. Sentences: text.en.ts. Verdict: model.ts. Arithmetic: shared/packages. */
import { defineCalculator, type Answer } from '../form/calculator.ts';
import { draw } from '../form/drawing.ts';
import { boxOf, type Field } from '../form/field.ts';
import { count, quantity } from '../form/kind.ts';
import type { System } from '../form/measures.ts';
import { numberList } from '../form/number-list.ts';
import { put, show } from '../form/outputs.ts';
import { choice, single } from '../form/single.ts';
import { smallWeight, systemOf } from '../form/units.ts';
import * as remembered from '../form/remembered.ts';
import { judgeWeights, ruleNames, type Judgement, type Weighed, type WeightFigures } from './model.ts';
import { drawWeights } from './chart.ts';
import type { NextKind } from './next.ts';
import { verdictSteps, weightWords } from './shown.ts';
import * as words from './text.en.ts';

defineCalculator<Weighed, WeightFigures>('weight-check', {
  fields: {
    rule: choice(ruleNames, words.what.rule),
    'label-g': single(quantity(smallWeight, words.what.label)),
    lot: single(count(words.what.lot)),
    'weights-g': weights(),
  },
  work: (weighed, { form, result, figures }) => {
    const judgement = judgeWeights(weighed, figures);
    if (!judgement.ok) {
      const [name, says] = words.faultWords(judgement.reason, judgement.row, weighed, figures.units);
      return [{ box: boxOf(form, name), words: says }];
    }
    showCheck(weighed, judgement.value, result, figures.units);
    draw(result.querySelector<SVGElement>('svg.chart')!, drawWeights(weighed, judgement.value, figures.units));
    const { check, held } = judgement.value;
    const verdict = held ? check.verdict : 'not-judged';
    return {
      headline: words.headline(weighed, judgement.value, figures.units),
      more: words.verdictReason(judgement.value, weighed),
      tag: held ? [words.verdictNames[check.verdict], verdictSteps[check.verdict], check.verdict] : [words.noVerdict, ''],
      asked: words.questionWords(weighed, figures.units),
      next: {
        kind: verdict,
        says: words.nextStep(verdict),
        again: verdict === 'too-few' ? words.weighRest : words.nextDelivery,
      },
    } satisfies Answer<NextKind>;
  },
});

function showCheck(weighed: Weighed, judgement: Judgement, result: HTMLElement, units: System): void {
  const { check, held } = judgement;
  show(result, 'rule', words.ruleWords(weighed, held));
  put(result, 'sample-needed', held ? words.sampleWords(weighed, judgement) : words.noFigure, held ? check.sampleNeeded : undefined);
  put(result, 'mean-error', words.meanWords(judgement, units), check.meanErrorG);
  put(result, 'spread', check.spreadG === undefined ? words.noSpread : weightWords(check.spreadG, units), check.spreadG);
  put(result, 'limit', held ? words.limitWords(judgement, weighed, units) : words.noFigure, held ? check.limitG : undefined);
  put(result, 'short-once', held ? words.shortWords(check.shortOnce, 1, judgement, units) : words.noFigure, check.shortOnce);
  const twice = held?.rule.mostShortTwice === undefined ? undefined : check.shortTwice;
  put(
    result,
    'short-twice',
    held ? (held.rule.mostShortTwice === undefined ? words.notCounted : words.shortWords(twice, 2, judgement, units)) : words.noFigure,
    twice,
  );
  show(result, 'far-off', words.farOffWords(weighed));
  show(result, 'sum', words.sumWords(weighed, judgement, units));
}

/** The list of weights. It shows how many were read, so that an incomplete paste is visible at once. */
function weights(): Field<readonly number[]> {
  const kind = numberList({
    what: words.what.weights,
    word: words.weight,
    one: words.what.oneWeight,
    most: 500,
    measure: smallWeight,
  });
  const field = single(kind);
  const tell = (form: HTMLFormElement, name: string): void => {
    const read = kind.read(remembered.read(boxOf(form, name)), systemOf(form));
    form.querySelector(`[data-read-as="${name}"]`)!.textContent = read.ok ? words.weightsRead(read.value.length) : '';
  };
  return {
    ...field,
    read: (form, name) => {
      tell(form, name);
      return field.read(form, name);
    },
    fill: (form, name, text) => {
      const read = kind.readAddress(text);
      const fault = field.fill(form, name, text);
      // The address separates them with commas, which the box would refuse. So the address keeps its own error.
      return read.ok || text === '' ? fault : { box: boxOf(form, name), words: kind.says(read, text, systemOf(form)) };
    },
    wake: (form, name) => {
      boxOf(form, name).addEventListener('input', () => tell(form, name));
      form.addEventListener('reset', () => form.querySelector(`[data-read-as="${name}"]`)!.replaceChildren());
    },
  };
}
