/* Form of the package calendar. Sentences: text.en.ts. Dates and bees: model.ts. Arithmetic: shared/packages. */
import { isDay, parseDay, type Day } from '../../../shared/days/day.ts';
import { formatDayWithWeekday } from '../../../shared/days/show-day.ts';
import { formatMonthDay, monthDayOf } from '../../../shared/days/year-span.ts';
import { unwrap } from '../../../shared/result.ts';
import type { DayPair, ShakenReason } from '../../../shared/packages/calendar.ts';
import type { StartReason } from '../../../shared/packages/start-bees.ts';
import { defineCalculator, type Answer } from '../form/calculator.ts';
import { day, optionalDay } from '../form/day-field.ts';
import { draw } from '../form/drawing.ts';
import { boxOf, type FormError } from '../form/field.ts';
import { quantity } from '../form/kind.ts';
import { languageHere } from '../../../shared/country/language-here.ts';
import { make } from '../form/make.ts';
import { put, show } from '../form/outputs.ts';
import { choice, single } from '../form/single.ts';
import { dayFromToday, todayHere } from '../form/today.ts';
import { packageWeight, perWeight } from '../form/units.ts';
import type { Dated } from './calendar-file.ts';
import { planPackage, type Package, type PackageFigures, type Plan } from './model.ts';
import type { NextKind } from './next.ts';
import { beesWords, whole } from './bees.ts';
import { drawCurve } from './chart.ts';
import * as text from './text.en.ts';

defineCalculator<Package, PackageFigures>('package-calendar', {
  fields: {
    installed: day(text.what.installed),
    shaken: optionalDay(text.what.shaken),
    pounds: single(quantity(packageWeight, text.what.pounds)),
    queen: choice(['candy', 'released'], text.what.queen),
    comb: choice(['drawn', 'foundation'], text.what.comb),
    'bees-per-pound': single(quantity(perWeight, text.what.beesPer)),
  },
  work: (given, { form, result, figures }) => {
    const planned = planPackage(given, figures);
    if (!planned.ok) return [faultOf(planned.reason, form, figures)];
    const plan = planned.value;
    showDates(plan, result, given);
    showBees(plan, result, figures);
    show(result, 'no-eggs', text.noEggsWords(plan, languageHere()));
    show(result, 'sum', text.sumWords(given, plan, figures, languageHere()));
    const button = result.closest('.calculator')!.querySelector<HTMLButtonElement>('[data-calendar]')!;
    button.hidden = datedRows(result).length === 0;
    button.onclick = () => void saveCalendar(given.installed, result);
    return answerOf(given, plan, result, figures);
  },
});

function answerOf(given: Package, plan: Plan, result: HTMLElement, figures: PackageFigures): Answer<NextKind> {
  const today = todayHere();
  const ahead = datedRows(result)
    .filter(({ days }) => days.latest >= today)
    .sort((a, b) => (a.days.earliest < b.days.earliest ? -1 : 1));
  const [first] = ahead;
  return {
    headline: text.headline(given, plan, languageHere()),
    asked: text.questionWords(given, figures, languageHere()),
    next: {
      kind: today < given.installed ? 'before' : first ? 'running' : 'over',
      again: first
        ? text.next(first.what, first.days.earliest, first.days.latest, today, languageHere())
        : text.nextCount(dayFromToday(28)),
      values: { syrup: `sugar-parts=1&water-parts=1&by=weight&know=syrup&amount=1&unit=${figures.units === 'us' ? 'us-gal' : 'L'}` },
    },
  };
}

function faultOf(reason: ShakenReason | StartReason, form: HTMLFormElement, { units }: PackageFigures): FormError {
  const boxes = {
    'shaken-after-install': 'shaken',
    'shaken-too-long-ago': 'shaken',
    'no-weight': 'pounds',
    'no-bees-per-pound': 'bees-per-pound',
    'too-much': 'pounds',
  };
  return { box: boxOf(form, boxes[reason]), words: text.faultWords(reason, units) };
}

function putPair(result: HTMLElement, name: string, pair: Partial<DayPair> | undefined, reason: string): void {
  const { earliest, latest } = pair ?? {};
  put(result, `${name}-earliest`, earliest ? formatDayWithWeekday(earliest, languageHere()) : reason, earliest);
  put(
    result,
    `${name}-latest`,
    latest ? (latest === earliest ? '' : text.toDay(formatDayWithWeekday(latest, languageHere()))) : earliest ? reason : '',
    latest,
  );
}

function showDates(plan: Plan, result: HTMLElement, { queen }: Package): void {
  putPair(result, 'queen-look', plan.queenLook, queen === 'released' ? text.notNeeded : text.noFigure);
  putPair(result, 'egg-look', plan.eggLook, text.noFigure);
  putPair(result, 'capped', plan.capped, text.noFigure);
  putPair(result, 'first-bees', plan.firstBees, text.noFigure);
  putPair(result, 'first-mite-count', plan.firstMiteCount, text.noFigure);
}

function showBees(plan: Plan, result: HTMLElement, figures: PackageFigures): void {
  const { curve, beesAtStart } = plan;
  const reason = text.noCurveWords(plan, figures);
  put(result, 'bees-at-start', whole(beesAtStart), beesAtStart);
  putPair(result, 'low-point', curve?.lowPoint, reason);
  putPair(result, 'back-to-start', curve?.backToStart, curve ? text.notInEightWeeks : reason);
  put(result, 'low-point-bees-least', curve ? beesWords(curve.lowPoint.beesLeast) : reason, curve?.lowPoint.beesLeast);
  put(result, 'low-point-bees-most', curve ? text.toMost(beesWords(curve.lowPoint.beesMost)) : '', curve?.lowPoint.beesMost);
  const picture = result.querySelector<HTMLElement>('[data-of="curve"]')!;
  picture.hidden = !curve;
  if (!curve) return;
  draw(picture.querySelector<SVGElement>('svg.chart')!, drawCurve(curve, beesAtStart));
  picture.querySelector('tbody')!.replaceChildren(
    ...curve.days.filter(({ sinceInstall }) => sinceInstall % 7 === 0).map(({ sinceInstall, day: on, beesLeast, beesMost }) =>
      make('tr', {}, make('th', { scope: 'row' }, String(sinceInstall)), make('td', {}, formatMonthDay(monthDayOf(on), languageHere())), make('td', {}, text.beesBetween(beesWords(beesLeast), beesWords(beesMost))))),
  ); // prettier-ignore
}

/** The rows of the table that have both days. */
function datedRows(result: HTMLElement): Dated[] {
  return [...result.querySelectorAll<HTMLElement>('[data-event]')].flatMap((row) => {
    const [earliest, latest] = [...row.querySelectorAll('output')].map(({ dataset }) => dataset.value ?? '');
    if (!isDay(earliest!) || !isDay(latest!)) return [];
    const cell = (part: string) => row.querySelector(`[data-${part}]`)!.textContent!.trim();
    return [{ name: row.dataset.event!, what: cell('what'), why: cell('why'), days: { earliest, latest } }];
  });
}

async function saveCalendar(installed: Day, result: HTMLElement): Promise<void> {
  const { writeCalendar } = await import('./calendar-file.ts');
  const { shelf, edition } = document.documentElement.dataset;
  const calendar = writeCalendar(datedRows(result), {
    installed,
    language: languageHere(),
    club: shelf!.replace(/\/.*/, ''),
    // The name of an edition is its day and a short mark.
    edition: unwrap(parseDay(edition!.slice(0, 10))),
    address: location.href,
  });
  const link = make('a', {
    href: URL.createObjectURL(new Blob([calendar], { type: 'text/calendar' })),
    download: `package-${installed}.ics`,
  });
  link.click();
  URL.revokeObjectURL(link.href);
}
