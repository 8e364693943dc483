/* Cases worked by hand from published figures, given to the calculators with the demo club's own figures, as their pages do. */
import assert from 'node:assert/strict';
import { join } from 'node:path';
import { broodDates } from '../../../shared/brood/dates.ts';
import { grainsBelow } from '../../../shared/feeding/solubility.ts';
import { kilogramsToPounds } from '../../../shared/units/weight.ts';
import { litresToUsGallons } from '../../../shared/units/volume.ts';
import { judgeCount } from '../../../src/calculators/mite-count/model.ts';
import { planPackage } from '../../../src/calculators/package-calendar/model.ts';
import { planSampling } from '../../../src/calculators/sampling-plan/model.ts';
import { mix } from '../../../src/calculators/syrup/model.ts';
import { judgeWeights } from '../../../src/calculators/weight-check/model.ts';
import { planStores } from '../../../src/calculators/winter-stores/model.ts';
import { projectFolder } from '../../../src/cli/paths.ts';
import { followedLevels, heldRange } from '../../../src/lib/calculator-figures.ts';
import type { Almanac } from '../../../src/lib/content.ts';
import { heldColony, heldHabits } from '../../../src/lib/package-figures.ts';
import { heldStores } from '../../../src/lib/stores-figures.ts';
import { heldWeightRules } from '../../../src/lib/weight-rules.ts';
import { readFolder } from '../../../src/source/folder.ts';
import { aDay } from '../../days.ts';
import { near } from '../../near.ts';
import { rows } from '../../rows.ts';
import * as tables from '../../tables/hand-worked.ts';

const { entries } = readFolder(join(projectFolder, 'content', 'demo-club'));
const byId = (name: string) => new Map(entries.filter(({ collection }) => collection === name).map(({ id, fields }) => [id, fields.value]));
const almanac = { figures: byId('figures'), sources: byId('sources') } as unknown as Almanac;
const today = aDay('2026-11-28');
const growth = heldRange(almanac, 'mite-growth-per-day', today)!;
const pair = ({ earliest, latest }: { earliest: string; latest: string }) => [earliest, latest];

rows('mite count', tables.counts, ({ mites, bees, phase, recovery = 100 }, expect) => {
  const result = judgeCount(
    { samples: [{ label: '', mites, bees }], method: recovery === 100 ? 'wash' : 'roll', phase, recovery },
    {
      levels: followedLevels(almanac, 'mite-action-level', today),
      atOnceLevels: followedLevels(almanac, 'mite-emergency-level', today),
      growth: { slowestPerDay: growth.least, fastestPerDay: growth.most },
      mostBees: 600,
      fewestColonies: null,
    },
  );
  if ('refused' in expect) return assert.equal(result.ok ? undefined : result.reason, expect.refused);
  assert.ok(result.ok);
  const [colony] = result.value.count.colonies;
  near(colony!.per100, expect.per100, 0.005, 'per 100');
  if (expect.low !== undefined) near(colony!.lowPer100, expect.low, 0.006, 'low');
  if (expect.high !== undefined) near(colony!.highPer100, expect.high, 0.006, 'high');
  if (expect.corrected !== undefined) near(colony!.per100Corrected!, expect.corrected, 0.005, 'corrected');
  assert.equal(result.value.count.verdict, expect.verdict);
});

rows('sampling plan', tables.samples, (asked, { bees }) => {
  const planned = planSampling(
    { ...asked, colonies: undefined },
    { coloniesLeast: null, coloniesMost: null, usualBees: 300, mostBees: 600 },
  );
  assert.equal(planned.ok && planned.value.beesNeeded, bees);
});

rows('syrup', tables.syrups, ({ sugar, water, by, know, amount, unit }, expect) => {
  const made = mix({ 'sugar-parts': sugar, 'water-parts': water, by, know, amount, unit, temperature: 20, 'sugar-per-cup': 200 });
  assert.ok(made.ok);
  const { brix, sugarKg, waterLitres, syrupLitres } = made.value;
  if ('state' in expect) return assert.equal(grainsBelow(brix).state, expect.state);
  const found = {
    brix,
    kgPerLitre: made.value.kgPerLitre,
    gallons: litresToUsGallons(syrupLitres),
    sugarPounds: kilogramsToPounds(sugarKg),
    waterQuarts: 4 * litresToUsGallons(waterLitres),
  };
  for (const [name, value] of Object.entries(expect))
    near(found[name as keyof typeof found], value, name === 'kgPerLitre' ? 5e-4 : 5e-3, name);
});

rows('winter stores', tables.hives, ({ deep, medium }, { stores, short }) => {
  const { frameKg, feeding, targetKg } = heldStores(almanac, today);
  const hive = { 'gross-kg': undefined, 'empty-kg': undefined, shallow: undefined, 'target-kg': targetKg!, mix: '2:1-weight' } as const;
  const planned = planStores({ ...hive, deep, medium }, { units: 'us', frameKg, feeding, sugarPerCup: 200, feedBy: [] });
  assert.ok(planned.ok);
  near(kilogramsToPounds(planned.value.storesKg!), stores, 0.01, 'stores');
  near(kilogramsToPounds(planned.value.shortKg!), short, 0.01, 'short');
});

rows('package calendar', tables.packages, ({ queen, comb }, { firstBees }) => {
  const planned = planPackage(
    { installed: aDay('2026-04-20'), shaken: undefined, pounds: 3, queen, comb, 'bees-per-pound': 3500 },
    { units: 'us', habits: heldHabits(almanac, today), colony: heldColony(almanac, today), trialBees: null, shakenBeforeDays: 2 },
  );
  assert.ok(planned.ok);
  assert.deepEqual(pair(planned.value.firstBees!), firstBees);
});

rows('brood dates', tables.broods, ({ caste, seen, on }, expect) => {
  const dates = broodDates(caste, seen, aDay(on));
  if (expect.emerges) assert.deepEqual(pair(dates.emerges), expect.emerges);
  if (expect.lays) assert.deepEqual(pair(dates.lays!), expect.lays);
  assert.deepEqual([dates.broodlessWorker, dates.broodlessDrone], [expect.broodlessWorker, expect.broodlessDrone]);
});

rows('weight check', tables.jars, ({ weights }, expect) => {
  const result = judgeWeights(
    { rule: 'us', 'label-g': 454, lot: 48, 'weights-g': weights },
    { units: 'us', rules: heldWeightRules(almanac, today) },
  );
  assert.ok(result.ok);
  const { check } = result.value;
  near(check.meanErrorG, expect.mean, 1e-9, 'mean');
  near(check.spreadG, expect.deviation, 5e-4, 'standard deviation');
  near(check.limitG, expect.limit, 5e-4, 'limit');
  near(check.toleranceG, expect.toleranceG, 0.05, 'allowed variation');
  assert.equal(check.verdict, 'passes');
});

rows('doubling', tables.doublings, ({ perDay }, { days }) => {
  const rate = perDay === 'slowest' ? growth.least : growth.most;
  near(Math.LN2 / rate, days, 0.06, 'days');
  const printed = heldRange(almanac, 'mite-doubling-days', today)!;
  assert.equal(perDay === 'slowest' ? printed.most : printed.least, Math.round(days));
});

rows('held figure', tables.held, ({ figure, row }, { unit, least, most }) => {
  assert.deepEqual(heldRange(almanac, figure, today, row), { least, most });
  assert.equal(almanac.figures.get(figure)!.unit, unit);
});
