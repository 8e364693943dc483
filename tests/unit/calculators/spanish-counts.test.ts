// Sentences of the calculators for mites, brood, treatments and degree-days, in Spanish with values: each is whole and has no English in it.
import assert from 'node:assert/strict';
import { afterAll, beforeAll, test, vi } from 'vitest';
import { setLanguageHere } from '../../../shared/country/language-here.ts';
import { broodDates } from '../../../shared/brood/dates.ts';
import { unwrap } from '../../../shared/result.ts';
import { castes, sights } from '../../../src/calculators/brood-dates/model.ts';
import * as brood from '../../../src/calculators/brood-dates/text.es.ts';
import { putTogether, type Evening } from '../../../src/calculators/count-day/model.ts';
import * as countDay from '../../../src/calculators/count-day/text.es.ts';
import { planDegreeDays } from '../../../src/calculators/degree-days/model.ts';
import * as degreeDays from '../../../src/calculators/degree-days/text.es.ts';
import { judgeCount, type Counted } from '../../../src/calculators/mite-count/model.ts';
import * as mites from '../../../src/calculators/mite-count/text.es.ts';
import { planSampling } from '../../../src/calculators/sampling-plan/model.ts';
import * as sampling from '../../../src/calculators/sampling-plan/text.es.ts';
import * as board from '../../../src/calculators/sticky-board/text.es.ts';
import { judgementWords } from '../../../src/calculators/treatment-window/judgement-words.ts';
import { judgeAll, type ShownRow } from '../../../src/calculators/treatment-window/model.ts';
import * as treatment from '../../../src/calculators/treatment-window/text.es.ts';
import * as counts from '../../../src/lib/counts.es.ts';
import * as labels from '../../../src/lib/treatment-words.es.ts';
import { aDay } from '../../days.ts';

vi.mock('../../../src/calculators/treatment-window/text.en.ts', () => import('../../../src/calculators/treatment-window/text.es.ts'));
beforeAll(() => setLanguageHere('es'));
afterAll(() => setLanguageHere('en-US'));

function wholeInSpanish(sentence: string): void {
  assert.doesNotMatch(sentence, /undefined|NaN|\[object|(?<!\p{L})(?:the|of|and|with|your|is|are|bees|mites|day|days)(?!\p{L})/iu);
}

/** Every text of a module, without its functions and the names of its gaps. */
function textsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value.replace(/\{\w+\}/g, '')];
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(textsIn) : [];
}

const day = aDay('2026-05-20');
const counted = (found: readonly (readonly [number, number])[], phase: Counted['phase']): Counted => ({
  samples: found.map(([number, bees]) => ({ label: '', mites: number, bees })),
  method: 'roll',
  phase,
  recovery: 90,
});
const level = { levelPer100: 3, phases: ['dearth' as const], words: 'Una fuente.', method: 'wash' as const };
const miteFigures = { levels: [level], atOnceLevels: [{ ...level, levelPer100: 8 }], growth: { slowestPerDay: 1.01, fastestPerDay: 1.03 }, mostBees: 600, fewestColonies: 8 }; // prettier-ignore
const row: ShownRow = {
  entry: 'acid', id: 'acid/strips', title: 'Ácido', form: 'tiras', place: 'Ohio', note: 1, seen: 'itself', limits: [{ of: 'daily-high', leastC: 10, mostC: 29.5 }],
  forbidsBrood: true, supers: 'off', daysMost: 14, poorWithBrood: true, poorOutside: [{ of: 'mean', leastC: 12 }], checkBy: aDay('2026-01-01'),
}; // prettier-ignore
const planned = { start: day, lowestHighC: 5, highestHighC: 33.4, meanC: 8, coldestC: -2, supersOn: true, brood: true, place: 'Ohio', registered: 'yes' as const, harvest: aDay('2026-05-25') }; // prettier-ignore
const asked = { days: [{ min: 4, max: 12.5 }, { min: 6, max: 20 }], base: 5, cap: undefined, scale: 'C' as const, spread: undefined, from: undefined, sum: 10 }; // prettier-ignore
const evening = (many: number, phase: Evening['phase']): Evening => ({
  counts: Array.from({ length: many }, (_, at) => ({ label: '', mites: at * 5, bees: 300 })),
  date: day,
  district: 'valle',
  method: 'gas',
  phase,
});

const sentences: Record<string, () => string[]> = {
  'mite count': () =>
    [
      counted([[0, 100]], 'dearth'), counted([[9, 300]], undefined), counted([[30, 300]], 'dearth'), counted([[1, 300]], 'swarming'),
      counted([[0, 300], [4, 300]], 'dearth'), counted([[40, 300], [50, 300]], 'dearth'), counted(Array(8).fill([10, 300]), 'dearth'),
    ].flatMap((each) => {
      const judgement = unwrap(judgeCount(each, miteFigures));
      const { apiary, colonies, toSettle, verdict } = judgement.count;
      return [
        mites.headline(judgement), mites.verdictReason(judgement), mites.nextStep(judgement, each), mites.askedWords(each), mites.sumWords(judgement, 90),
        mites.levelRemarks(judgement.level, each), mites.settleWords(toSettle, each.samples, miteFigures), mites.apiaryRemarks(apiary, colonies.length, 8),
        mites.noLevel(miteFigures, each.phase), mites.verdictWords(verdict, true), mites.soonestWords(0, true), mites.soonestWords(2, false), mites.latestWords(1),
      ];
    }), // prettier-ignore
  'brood dates': () =>
    castes.flatMap((caste) =>
      sights.flatMap((seen) => {
        const look = { caste, seen, date: day };
        return [brood.headline(look, broodDates(caste, seen, day), 'es'), brood.questionWords(look, 'es'), brood.sumWords(look), brood.next('laid', day, 'es')];
      }),
    ), // prettier-ignore
  'sampling plan': () =>
    [{ share: 1, certainty: 95, colonies: 12 }, { share: 0.1, certainty: 99.9, colonies: undefined }, { share: 100, certainty: 50, colonies: 1 }].flatMap((each) => {
      const figures = { coloniesLeast: 8, coloniesMost: 10, usualBees: 300, mostBees: 600 };
      const plan = unwrap(planSampling(each, figures));
      return [sampling.headline(plan, figures), sampling.samplesWords(plan, figures), sampling.sumWords(each, plan), sampling.askedWords(each), sampling.questionWords(each)];
    }), // prettier-ignore
  'sticky board': () => [1, 20.5].flatMap((days) => [board.headline(days), board.questionWords({ mites: 1, days }), board.sumWords({ mites: 9, days }, 9 / days)]), // prettier-ignore
  'count day': () =>
    [evening(1, 'dearth'), evening(5, 'dearth'), evening(5, 'swarming')].flatMap((each) => {
      const together = unwrap(putTogether(each, { levels: [level] }));
      return [countDay.headline(together), countDay.moreWords(together), countDay.allWords(together), countDay.overWords(together), countDay.askedWords(each, 'es'), countDay.sumWords(9, 300, together)];
    }), // prettier-ignore
  'degree-days': () =>
    (['simple', 'floored', 'sine', 'maximum'] as const).flatMap((method) => {
      const sums = unwrap(planDegreeDays({ ...asked, method }, { normals: null, doubt: null, plants: [], from: '03-01' as never }));
      const mine = { ...asked, method };
      return [degreeDays.headline(mine, sums, 'es'), degreeDays.questionWords(mine, sums), degreeDays.sumWords(mine, sums)];
    }),
  'treatment window': () => [
    treatment.questionWords(planned, 'metric', 'es'), treatment.plannedWords(planned, 'metric', 'es'), treatment.labelWords(row, 'es'),
    ...[[row], [{ ...row, seen: 'not-opened' as const, place: 'Otro' }, { ...row, place: 'Chile' }], []].flatMap((rows) => {
      const judgements = judgeAll(planned, rows, aDay('2026-05-19'));
      return [treatment.headline(judgements), ...judgements.map((one) => judgementWords(one, planned, 'metric', 'es'))];
    }),
    treatment.background.brood('not-known', true), treatment.background.days(3, 9), treatment.background.warmth(row.limits, 'us'),
  ], // prettier-ignore
  'words of every file': () => [mites, brood, sampling, board, countDay, degreeDays, treatment, counts, labels].flatMap(textsIn),
};

for (const [room, say] of Object.entries(sentences)) {
  test(`${room}: whole sentences in Spanish`, () => {
    const said = say();
    assert.ok(said.length > 5);
    said.forEach(wholeInSpanish);
  });
}

test('a limit of a label has the decimal comma and both of its scales', () => {
  const limit = treatment.limitWords({ of: 'daily-high', leastC: 10, mostC: 29.5 }, 'metric');
  assert.equal(limit, 'temperaturas máximas diarias de 10 °C (50 °F) a 29,5 °C (85 °F)');
});
