import assert from 'node:assert/strict';
import { test } from 'vitest';
import { broodDates, type BroodPair, type Seen } from '../../../../shared/brood/dates.ts';
import { development, type Caste } from '../../../../shared/brood/development.ts';
import { addDays, daysBetween } from '../../../../shared/days/day.ts';
import { rows } from '../../../rows.ts';
import { looks } from '../../../tables/brood.ts';
import { aDay } from '../../../days.ts';

const day = aDay('2026-05-10');

rows('brood seen', looks, ({ caste, seen }, expect) => {
  const dates = broodDates(caste, seen, day) as unknown as Record<string, BroodPair>;
  for (const [name, [earliest, latest]] of Object.entries(expect)) {
    assert.deepEqual(dates[name], { earliest: addDays(day, earliest), latest: addDays(day, latest) }, name);
  }
});

test('after laying stops, workers are gone after 21 days and drones after 24, across a leap day', () => {
  const dates = broodDates('worker', 'caged', aDay('2028-02-20'));
  assert.equal(dates.broodlessWorker, '2028-03-12');
  assert.equal(dates.broodlessDrone, '2028-03-15');
  assert.equal(broodDates('worker', 'egg', day).broodlessWorker, undefined);
});

test('a worker takes 3 + 6 + 12 = 21 days; a page that prints 14 for the sealed part is wrong', () => {
  const { hatchesDays, sealedDays, emergesDays } = development.worker;
  assert.equal(hatchesDays + 6 + (emergesDays.least - sealedDays.most), 21);
  assert.equal(sealedDays.most, hatchesDays + 6);
});

test('only a queen mates and lays; stages follow one another; an observation limits later stages', () => {
  const castes: Caste[] = ['worker', 'queen', 'drone'];
  const sights: Seen[] = ['egg', 'open', 'sealed', 'emerging', 'caged'];
  for (const caste of castes)
    for (const seen of sights) {
      const { laid, sealed, emerges, mates, lays } = broodDates(caste, seen, day);
      const stages = [laid, sealed, emerges, ...(mates && lays ? [mates, lays] : [])];
      assert.equal(stages.length, caste === 'queen' ? 5 : 3);
      stages.forEach((stage, at) => {
        assert.ok(daysBetween(stage.earliest, stage.latest) >= 0, `${caste} ${seen} ${at}`);
        const before = stages[at - 1];
        if (before)
          assert.ok(
            daysBetween(before.earliest, stage.earliest) > 0 && daysBetween(before.latest, stage.latest) > 0,
            `${caste} ${seen} ${at}`,
          );
      });
      if (seen === 'egg' || seen === 'open') assert.ok(daysBetween(day, sealed.earliest) >= 0);
      if (seen === 'sealed') assert.ok(daysBetween(day, emerges.earliest) >= 0 && daysBetween(sealed.latest, day) >= 0);
    }
});
