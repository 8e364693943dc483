/* Form of the winter stores. Sentences: text.en.ts. Calculation: model.ts. Arithmetic: shared/feeding. */
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
import {
  frames,
  mixes,
  planStores,
  syrupAddress,
  type Frame,
  type Hive,
  type HiveReason,
  type Stores,
  type StoresFigures,
} from './model.ts';
import * as text from './text.en.ts';
import type { NextKind } from './next.ts';

const frameCount = (kind: Frame) => single(optional(number(text.what.frames[kind])));

defineCalculator<Hive, StoresFigures>('winter-stores', {
  fields: {
    'gross-kg': measured(optional(quantity(hiveWeight, text.what.whole)), weightWords),
    'empty-kg': measured(optional(quantity(hiveWeight, text.what.empty)), weightWords),
    deep: frameCount('deep'),
    medium: frameCount('medium'),
    shallow: frameCount('shallow'),
    'target-kg': measured(quantity(hiveWeight, text.what.target), weightWords),
    mix: choice(mixes, text.what.mix),
  },
  work: (hive, { form, result, figures }) => {
    const planned = planStores(hive, figures);
    if (!planned.ok) return [faultOf(planned.reason, form, hive, figures.units)];
    const { units } = figures;
    const { storesKg, shortKg, feed } = planned.value;
    const weight = (name: string, kg: number | undefined) =>
      put(result, name, kg === undefined ? text.noFigure : weightWords(kg, units), kg);
    const feeds = (name: string, value: number | undefined, words: (value: number, first: typeof units) => string, isMost = false) =>
      put(
        result,
        name,
        value === undefined || shortKg === 0
          ? isMost
            ? ''
            : shortKg === 0 && value !== undefined
              ? text.noneNeeded
              : text.noFigure
          : isMost
            ? text.toMost(words(value, units))
            : words(value, units),
        value,
      );
    weight('stores-kg', storesKg);
    put(result, 'short-kg', shortKg === undefined ? text.noFigure : shortKg === 0 ? text.nothing : weightWords(shortKg, units), shortKg);
    feeds('sugar-kg-least', feed?.sugarKgLeast, weightWords);
    feeds('sugar-kg-most', feed?.sugarKgMost, weightWords, true);
    feeds('syrup-l-least', feed?.syrupLitresLeast, volumeWords);
    feeds('syrup-l-most', feed?.syrupLitresMost, volumeWords, true);
    const chosen = figures.feedBy.find(({ district }) => district === document.documentElement.dataset.district) ?? figures.feedBy[0];
    put(result, 'feed-by', chosen?.words ?? text.noFigure, chosen?.day);
    show(result, 'sum', text.sumWords(hive, planned.value, figures));
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
    headline: text.headline(hive, stores, figures),
    more: text.kitchenWords(stores, figures),
    tag: shortKg === undefined ? undefined : isShort ? [text.verdicts.short, 'act'] : [text.verdicts.enough, 'settled'],
    asked: text.questionWords(hive, figures.units),
    next: {
      kind: shortKg === undefined ? 'no-figure' : !isShort ? 'enough' : isLate ? 'short-late' : 'short',
      says: isShort && isLate ? text.lateForSyrup : '',
      again: feedBy && !isLate ? (isShort ? text.allBy(feedBy.words) : text.weighBefore(feedBy.words)) : text.nextLook(dayFromToday(14)),
      ...(feed ? { values: { syrup: syrupAddress(hive.mix, feed.sugarKgMost, figures.units) } } : {}),
    },
  };
}

function faultOf(reason: HiveReason, form: HTMLFormElement, hive: Hive, units: System): FormError {
  // Every available mix is possible, so its errors cannot occur.
  const boxes: Partial<Record<HiveReason, string>> = {
    'nothing-given': 'gross-kg',
    'both-ways': 'gross-kg',
    'no-gross': 'gross-kg',
    'no-empty': 'empty-kg',
    'impossible-weight': (hive['gross-kg'] ?? 0) < 0 || (hive['gross-kg'] ?? 0) > 1000 ? 'gross-kg' : 'empty-kg',
    'empty-heavier-than-gross': 'empty-kg',
    'impossible-frames': frames.find((kind) => (hive[kind] ?? 0) < 0 || (hive[kind] ?? 0) > 100) ?? 'deep',
    'no-target': 'target-kg',
  };
  return { box: boxOf(form, boxes[reason]!), words: text.faultWords(reason, units)! };
}
