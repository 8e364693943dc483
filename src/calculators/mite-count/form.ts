/* Form of the mite count. Words: text.en.ts. Verdict: model.ts. Arithmetic: shared/mites. */
import { phases } from '../../../shared/mites/action-level.ts';
import type { SampleReason } from '../../../shared/mites/rate.ts';
import { toDataValue } from '../../../shared/numbers/show-number.ts';
import { defineCalculator, type Answer, type Place } from '../form/calculator.ts';
import { colonyRows, sampleFault } from '../form/colony-rows.ts';
import * as counts from '../form/colony-rows.en.ts';
import { draw } from '../form/drawing.ts';
import { boxOf, type FormError } from '../form/field.ts';
import { number } from '../form/kind.ts';
import { make, makeOutput } from '../form/make.ts';
import { put, show } from '../form/outputs.ts';
import { choice, optionalChoice, single } from '../form/single.ts';
import { dayFromToday, todayHere } from '../form/today.ts';
import { inPercent } from '../form/typed-units.ts';
import { judgeCount, methods, rateWords, verdictSteps, type Counted, type Judgement, type Method, type MiteFigures } from './model.ts';
import { drawCount } from './chart.ts';
import { daysToNextCount, nextKind, type NextKind } from './next.ts';
import * as words from './text.en.ts';

const hazardsOf: Readonly<Record<Method, readonly string[]>> = { wash: ['alcohol-fire'], roll: [], gas: ['carbon-dioxide'] };
/** A longer table is folded, because the chart says the same. */
const mostOpen = 4;

defineCalculator<Counted, MiteFigures>('mite-count', {
  fields: {
    samples: colonyRows(24),
    method: choice(methods, counts.methodAsked),
    phase: optionalChoice(phases),
    recovery: single(number(words.recovery.asked, inPercent)),
  },
  work: (counted, place) => {
    const judgement = judgeCount(counted, place.figures);
    if (!judgement.ok) return [faultOf(judgement.reason, judgement.row, place.form)];
    showColonies(judgement.value, place.result);
    showVerdict(judgement.value, counted, place);
    showWeeks(judgement.value, place);
    draw(place.result.querySelector<SVGElement>('svg.chart')!, drawCount(judgement.value));
    show(place.result, 'sum', words.sumWords(judgement.value, counted.recovery));
    return answerOf(judgement.value, counted, place.figures);
  },
});

function answerOf(judgement: Judgement, counted: Counted, figures: MiteFigures): Answer<NextKind> {
  const { verdict, coloniesAtOnce } = judgement.count;
  const days = daysToNextCount(judgement, figures);
  return {
    headline: words.headline(judgement),
    more: words.verdictReason(judgement),
    tag: [words.verdictWords(verdict, coloniesAtOnce.length > 0) || words.noVerdict, verdict ? verdictSteps[verdict] : '', verdict],
    asked: words.askedWords(counted),
    next: {
      kind: nextKind(judgement, counted),
      says: words.nextStep(judgement, counted),
      // Of these verdicts each asks for more samples.
      hazards: verdict === 'act' || verdict === 'unsure' ? hazardsOf[counted.method] : [],
      again: words.nextCount(days === undefined ? undefined : dayFromToday(days)),
      values: { 'treatment-window': `start=${todayHere()}` },
    },
  };
}

const faultOf = (reason: SampleReason | 'no-samples', row: number | undefined, form: HTMLFormElement): FormError =>
  reason === 'impossible-recovery' ? { box: boxOf(form, 'recovery'), words: words.recovery.impossible } : sampleFault(form, reason, row);

function showColonies(judgement: Judgement, result: HTMLElement): void {
  const { colonies, apiary } = judgement.count;
  const rate = (name: string, value: number) => makeOutput(name, rateWords(value, judgement), toDataValue(value));
  result.querySelector('tbody')!.replaceChildren(
    ...colonies.map((colony) => {
      const name = colony.label;
      const corrected =
        colony.per100Corrected === undefined
          ? []
          : [make('small', {}, rate('per-100-corrected', colony.per100Corrected), ` ${words.cells.corrected}`)];
      return make('tr', { 'data-sample': name },
        make('th', { scope: 'row' }, name, make('small', {}, words.cells.miteInBees(colony.mites, colony.bees))),
        make('td', {}, rate('per-100', colony.per100), ...corrected),
        make('td', {}, rate('low', colony.lowPer100), ` ${words.cells.to} `, rate('high', colony.highPer100)),
        make('td', {}, words.verdictWords(colony.verdict, colony.atOnce)),
      ); // prettier-ignore
    }),
  );
  foldNumbers(result.querySelector<HTMLDetailsElement>('[data-of="numbers"]')!, colonies.length > mostOpen);
  result.querySelector('tfoot')!.hidden = !apiary;
  if (!apiary) return;
  put(result, 'apiary-per-100', rateWords(apiary.per100, judgement), apiary.per100);
  const { lowPer100: low, highPer100: high } = apiary;
  put(result, 'apiary-low', low === undefined ? words.cells.noRange : rateWords(low, judgement), low);
  put(result, 'apiary-high', high === undefined ? '' : words.cells.upTo(rateWords(high, judgement)), high);
  show(result, 'apiary-verdict', words.verdictWords(apiary.verdict, false));
}

/** Once for each length, so that a fold stays as the reader left it. */
function foldNumbers(fold: HTMLDetailsElement, isLong: boolean): void {
  if (fold.dataset.long !== String(isLong)) fold.open = !isLong;
  fold.dataset.long = String(isLong);
}

function showVerdict(judgement: Judgement, counted: Counted, { result, figures }: Place<MiteFigures>): void {
  const { count: { toSettle, coloniesToAct, colonies, apiary }, level, atOnce } = judgement; // prettier-ignore
  put(result, 'action-level', level ? words.cells.per100(level.levelPer100) : words.noLevel(figures, counted.phase), level?.levelPer100);
  show(result, 'level-from', level ? `${level.words} ${words.levelRemarks(level, counted)}` : '');
  put(result, 'at-once-level', atOnce ? words.cells.per100(atOnce.levelPer100) : words.cells.noAtOnce, atOnce?.levelPer100);
  show(result, 'at-once-from', atOnce ? atOnce.words : '');
  placeOf(result, 'at-once-level')!.hidden = !atOnce;
  put(
    result,
    'bees-to-settle',
    words.settleWords(toSettle, counted.samples, figures),
    toSettle && toSettle.bees !== 'too-many' ? toSettle.bees : undefined,
  );
  put(
    result,
    'colonies-to-act',
    coloniesToAct.join(', ') || words.cells.none,
    coloniesToAct.length > 0 ? coloniesToAct.join(';') : undefined,
  );
  result.querySelector<HTMLElement>('[data-of="bees-to-settle"]')!.hidden = !toSettle;
  placeOf(result, 'colonies-to-act')!.hidden = !apiary || !level;
  show(result, 'apiary-remarks', words.apiaryRemarks(apiary, colonies.length, figures.fewestColonies));
}

/** Levels are in the fold after the result. */
function placeOf(result: HTMLElement, of: string): HTMLElement {
  return result.closest('.calculator')!.querySelector<HTMLElement>(`[data-of="${of}"]`)!;
}

function showWeeks({ count: { weeks, colonies }, level }: Judgement, { result, figures }: Place<MiteFigures>): void {
  const reached = level !== undefined && colonies.some(({ highPer100 }) => highPer100 >= level.levelPer100);
  const soonest = figures.growth && 'soonestWeeks' in weeks ? weeks.soonestWeeks : undefined;
  const latest = figures.growth && 'latestWeeks' in weeks ? weeks.latestWeeks : undefined;
  const reason = figures.growth ? words.weeksReasons[weeks.state] : words.noFigure;
  put(result, 'weeks-to-level-soonest', soonest === undefined ? reason : words.soonestWords(soonest, reached), soonest);
  put(result, 'weeks-to-level-latest', latest === undefined ? (soonest === undefined ? '' : reason) : words.latestWords(latest), latest);
}
