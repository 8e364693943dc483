/* Form of the winter stores. Sentences: text.ts. Calculation: model.ts. Arithmetic: shared/feeding. */
import { defineCalculator, type Answer } from '../form/calculator.ts';
import { draw } from '../form/drawing.ts';
import { boxOf, type FormError } from '../form/field.ts';
import { number, optional, quantity } from '../form/kind.ts';
import { measured } from '../form/measured.ts';
import { volumeWords, weightWords, type System } from '../form/measures.ts';
import { put, show } from '../form/outputs.ts';
import { choice, single } from '../form/single.ts';
import { dayFromToday, todayHere } from '../form/today.ts';
import { hiveWeight } from '../form/units.ts';
import { drawStores } from './chart.ts';
import { mixes, planStores, type Hive, type HiveReason, type Stores, type StoresFigures } from './model.ts';
import { headline, kitchenWords, noFigure, questionWords, sumWords, syrupAddress } from './text.ts';
import type { NextKind } from './next.ts';

const whole = { us: 'what the whole hive weighs, such as 130', metric: 'what the whole hive weighs, such as 59' };
const empty = {
  us: 'what the hive weighs without bees and stores, such as 80',
  metric: 'what the hive weighs without bees and stores, such as 36',
};
const targetHints = { us: 'the stores wanted, such as 60', metric: 'the stores wanted, such as 27' };
const frameCount = (kind: string) => single(optional(number(`how many ${kind} frames of honey there are, such as 5 or 5½`)));

defineCalculator<Hive, StoresFigures>('winter-stores', {
  fields: {
    'gross-kg': measured(optional(quantity(hiveWeight, whole)), weightWords),
    'empty-kg': measured(optional(quantity(hiveWeight, empty)), weightWords),
    deep: frameCount('deep'),
    medium: frameCount('medium'),
    shallow: frameCount('shallow'),
    'target-kg': measured(quantity(hiveWeight, targetHints), weightWords),
    mix: choice(mixes, 'a mix'),
  },
  work: (hive, { form, result, figures }) => {
    const planned = planStores(hive, figures);
    if (!planned.ok) return [faultOf(planned.reason, form, hive, figures.units)];
    const { units } = figures;
    const { storesKg, shortKg, feed } = planned.value;
    const weight = (name: string, kg: number | undefined) => put(result, name, kg === undefined ? noFigure : weightWords(kg, units), kg);
    const feeds = (name: string, value: number | undefined, words: (value: number, first: typeof units) => string, before = '') =>
      put(
        result,
        name,
        value === undefined ? (before ? '' : noFigure) : shortKg === 0 ? (before ? '' : 'None needed') : before + words(value, units),
        value,
      );
    weight('stores-kg', storesKg);
    put(result, 'short-kg', shortKg === undefined ? noFigure : shortKg === 0 ? 'Nothing' : weightWords(shortKg, units), shortKg);
    feeds('sugar-kg-least', feed?.sugarKgLeast, weightWords);
    feeds('sugar-kg-most', feed?.sugarKgMost, weightWords, 'to ');
    feeds('syrup-l-least', feed?.syrupLitresLeast, volumeWords);
    feeds('syrup-l-most', feed?.syrupLitresMost, volumeWords, 'to ');
    const chosen = figures.feedBy.find(({ district }) => district === document.documentElement.dataset.district) ?? figures.feedBy[0];
    put(result, 'feed-by', chosen?.words ?? noFigure, chosen?.day);
    show(result, 'sum', sumWords(hive, planned.value, figures));
    const picture = result.querySelector<SVGElement>('svg.chart')!;
    picture.toggleAttribute('hidden', storesKg === undefined);
    if (storesKg !== undefined) draw(picture, drawStores(storesKg, hive['target-kg'], units));
    return answerOf(hive, planned.value, figures, chosen);
  },
});

function answerOf(
  hive: Hive,
  stores: Stores,
  figures: StoresFigures,
  feedBy: StoresFigures['feedBy'][number] | undefined,
): Answer<NextKind> {
  const { shortKg, feed } = stores;
  const isShort = shortKg !== undefined && shortKg > 0;
  const today = todayHere().slice(5);
  // From the last day for syrup until the next spring. South of the equator that day is before the winter too, in the first half of the year.
  const isLate = feedBy !== undefined && (feedBy.day > '07' ? today > feedBy.day || today < '03' : today > feedBy.day && today < '09');
  return {
    headline: headline(hive, stores, figures),
    more: kitchenWords(stores, figures),
    tag: shortKg === undefined ? undefined : isShort ? ['Short', 'act'] : ['Enough', 'settled'],
    asked: questionWords(hive, figures.units),
    next: {
      kind: shortKg === undefined ? 'no-figure' : !isShort ? 'enough' : isLate ? 'short-late' : 'short',
      says: isShort && isLate ? 'It is late for syrup here. Bees that are short now need dry sugar or fondant above the cluster.' : '',
      again:
        feedBy && !isLate
          ? `${isShort ? 'All of it must be in the hive by' : 'Weigh again before'} ${feedBy.words}`
          : `Next look: ${dayFromToday(14)}.`,
      ...(feed ? { values: { syrup: syrupAddress(hive.mix, feed.sugarKgMost, figures.units) } } : {}),
    },
  };
}

function faultOf(reason: HiveReason, form: HTMLFormElement, hive: Hive, units: System): FormError {
  const most = units === 'us' ? '2,200 lb' : '1,000 kg';
  // Every available mix is possible, so its errors cannot occur.
  const faults: Partial<Record<HiveReason, readonly [box: string, words: string]>> = {
    'nothing-given': ['gross-kg', 'Write what the hive weighs, or how many frames of honey there are.'],
    'both-ways': ['gross-kg', 'Write the weights or the frames, not both. Empty the others.'],
    'no-gross': ['gross-kg', `Write ${whole[units]}.`],
    'no-empty': ['empty-kg', `Write ${empty[units]}.`],
    'impossible-weight': [
      (hive['gross-kg'] ?? 0) < 0 || (hive['gross-kg'] ?? 0) > 1000 ? 'gross-kg' : 'empty-kg',
      `A hive weighs from 0 to ${most}.`,
    ],
    'empty-heavier-than-gross': ['empty-kg', 'The empty hive cannot weigh more than the whole.'],
    'impossible-frames': [
      (['deep', 'medium', 'shallow'] as const).find((kind) => (hive[kind] ?? 0) < 0 || (hive[kind] ?? 0) > 100) ?? 'deep',
      'Frames are from 0 to 100.',
    ],
    'no-target': ['target-kg', `The stores wanted must be more than 0 and at most ${most}.`],
  };
  const [name, words] = faults[reason]!;
  return { box: boxOf(form, name), words };
}
