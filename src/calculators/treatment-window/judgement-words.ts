/* The sentences of one row: one for each rule, the deciding one first, then what labels of other places say about such days. */
import { againstLimit, supersBackOn, type LabelRow, type Planned, type TreatmentRule, type WarmthLimit } from '../../../shared/treatments/label-row.ts'; // prettier-ignore
import type { Language } from '../../../shared/country/language.ts';
import { formatDay } from '../../../shared/days/show-day.ts';
import type { System } from '../form/measures.ts';
import type { RowJudgement, ShownRow } from './model.ts';
import * as text from './text.en.ts';
import { warmthAlone, warmthWords } from './warmth.ts';

export function judgementWords(
  { row, judgement: { state, rules }, elsewhere }: RowJudgement,
  planned: Planned,
  units: System,
  language: Language,
): string {
  const own =
    state === 'nothing-found'
      ? [text.nothingFound, ...(row!.limits.length === 0 ? [text.noLimits] : [])]
      : rules.flatMap((rule) => ruleWords(rule, row, planned, units, language));
  return [...own, ...elsewhere.flatMap((other) => elsewhereWords(other, planned, units))].join(' ');
}

function elsewhereWords(row: ShownRow, planned: Planned, units: System): string[] {
  const out = warmthFaults(row.limits, planned, units);
  const poor = warmthFaults(row.poorOutside, planned, units, { poorly: true });
  return [
    ...(out.length > 0 ? [text.elsewhereOut(row.place, row.form), ...out] : []),
    ...(poor.length > 0 ? [text.elsewherePoor(row.form), ...poor] : []),
  ];
}

function ruleWords(rule: TreatmentRule, row: LabelRow | undefined, planned: Planned, units: System, language: Language): string[] {
  switch (rule) {
    case 'too-cold':
      return warmthFaults(row!.limits, planned, units, { only: 'cold' });
    case 'too-warm':
      return warmthFaults(row!.limits, planned, units, { only: 'warm' });
    case 'poor-cold':
      return [text.poorCold, ...warmthFaults(row!.poorOutside, planned, units, { only: 'cold', poorly: true })];
    case 'poor-warm':
      return [text.poorWarm, ...warmthFaults(row!.poorOutside, planned, units, { only: 'warm', poorly: true })];
    case 'harvest-too-soon':
      return [text.boxesBack(formatDay(supersBackOn(row!, planned.start)!, language))];
    case 'past-check-by':
      return [text.pastCheck(formatDay(row!.checkBy, language))];
    case 'other-place':
      return [text.noRowFor(planned.place.trim())];
    default:
      return [text.rules[rule]];
  }
}

/** "Too warm: its label asks for daily highs of at most 85 °F (29.5 °C) on the day it goes in. Your warmest day reaches 91 °F." */
function warmthFaults(
  limits: readonly WarmthLimit[],
  planned: Planned,
  units: System,
  { only, poorly = false }: { only?: 'cold' | 'warm'; poorly?: boolean } = {},
): string[] {
  return limits.flatMap((limit) => {
    const { cold, warm } = againstLimit(limit, planned);
    const { of, when } = limit;
    return [
      ...(cold && only !== 'warm'
        ? [text.tooCold({ of, when, poorly, bound: warmthWords(limit.leastC!, units) }), coldestOf(limit, planned, units)]
        : []),
      ...(warm && only !== 'cold'
        ? [text.tooWarm({ of, when, poorly, bound: warmthWords(limit.mostC!, units) }), warmestOf(limit, planned, units)]
        : []),
    ];
  });
}

function coldestOf({ of }: WarmthLimit, { lowestHighC, highestHighC, meanC, coldestC }: Planned, units: System): string {
  if (of === 'mean')
    return meanC === undefined ? text.yourWarmest(warmthAlone(highestHighC, units)) : text.yourMean(warmthAlone(meanC, units));
  return of === 'any-time' && coldestC !== undefined
    ? text.yourColdestHour(warmthAlone(coldestC, units))
    : text.yourCoolest(warmthAlone(lowestHighC, units));
}

const warmestOf = ({ of }: WarmthLimit, { highestHighC, meanC }: Planned, units: System): string =>
  of === 'mean' ? text.yourMean(warmthAlone(meanC!, units)) : text.yourWarmest(warmthAlone(highestHighC, units));
