/* Ranking of signs: cases worked by hand, and properties that apply to any choice. */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { missingPoints, showsTimes, strengthPoints, therePoints, type Shows, type Strength } from '../../../../shared/signs/points.ts';
import { rankSigns, type Trouble } from '../../../../shared/signs/rank.ts';
import { rows } from '../../../rows.ts';
import { rankings, troubles } from '../../../tables/signs.ts';

rows('signs', rankings, (picked, { points, order, fitLittle, outcome }) => {
  const ranking = rankSigns(picked, troubles);
  assert.deepEqual(
    ranking.candidates.map(({ id }) => id),
    order,
  );
  assert.deepEqual(Object.fromEntries(ranking.candidates.map((candidate) => [candidate.id, candidate.points])), points);
  assert.deepEqual(ranking.fitLittle, fitLittle);
  assert.equal(ranking.outcome, outcome);
});

test('it says what fits, what speaks against, what is open, and what to look for next', () => {
  const [grave, mild] = rankSigns({ there: ['holes', 'bag'], notThere: ['thread'], phase: 'dearth' }, troubles).candidates;
  assert.deepEqual(
    grave!.fits.map(({ sign }) => sign),
    ['holes'],
  );
  assert.deepEqual(grave!.against, [
    { sign: 'bag', why: 'never-shows' },
    { sign: 'thread', why: 'not-there' },
  ]);
  assert.deepEqual([grave!.outOfSeason, grave!.lookFor, grave!.open], [true, [], []]);
  assert.deepEqual([mild!.against, mild!.outOfSeason], [[], false]);
  const [first] = rankSigns({ there: ['holes'], notThere: [] }, troubles.slice(2)).candidates;
  assert.deepEqual(first!.lookFor, ['webs', 'crumbs']);
});

test('a stronger or more frequent sign never counts for less', () => {
  const strengths: Strength[] = ['weak', 'fair', 'strong'];
  const shows: Shows[] = ['seldom', 'sometimes', 'often', 'always'];
  const rises = (numbers: number[]): boolean => numbers.every((number, index) => index === 0 || number > numbers[index - 1]!);
  assert.ok(rises(strengths.map((each) => strengthPoints[each])) && rises(shows.map((each) => showsTimes[each])));
  assert.ok(rises([...shows].reverse().map((each) => missingPoints[each])));
  assert.ok(strengths.every((strength) => therePoints({ strength, shows: 'never' }) === -therePoints({ strength, shows: 'always' })));
});

const names = ['a', 'b', 'c', 'd', 'e', 'f'];
const anySign = fc.record({
  sign: fc.constantFrom(...names),
  strength: fc.constantFrom<Strength>('strong', 'fair', 'weak'),
  shows: fc.constantFrom<Shows>('always', 'often', 'sometimes', 'seldom', 'never'),
});
const anyTrouble = (id: string): fc.Arbitrary<Trouble> =>
  fc
    .record({
      mustReport: fc.boolean(),
      harmless: fc.boolean(),
      shown: fc.uniqueArray(anySign, { selector: ({ sign }) => sign, maxLength: 5 }),
    })
    .map((made) => ({ id, ...made }));
const anyTroubles = fc.tuple(...['p', 'q', 'r', 's'].map(anyTrouble));
const anyPicked = fc
  .subarray(names)
  .chain((there) => fc.subarray(names.filter((name) => !there.includes(name))).map((notThere) => ({ there, notThere })));

test('each trouble with a fitting sign is listed once, and reportable ones come first', () => {
  fc.assert(
    fc.property(anyTroubles, anyPicked, (all, picked) => {
      const { candidates, fitLittle, outcome } = rankSigns(picked, all);
      const fitting = all
        .filter(({ shown }) => shown.some(({ sign, shows }) => shows !== 'never' && picked.there.includes(sign)))
        .map(({ id }) => id);
      assert.deepEqual([...candidates.map(({ id }) => id), ...fitLittle].sort(), fitting.sort());
      const report = candidates.map(({ id }) => all.find((trouble) => trouble.id === id)!.mustReport);
      assert.deepEqual(
        report,
        [...report].sort((a, b) => Number(b) - Number(a)),
      );
      assert.ok(all.every(({ id, mustReport }) => !mustReport || !fitLittle.includes(id)));
      assert.equal(outcome === 'nothing-picked', picked.there.length === 0);
    }),
  );
});

test('one more fitting sign never lowers a trouble, and a missing one never raises it', () => {
  const pointsOf = (all: readonly Trouble[], there: string[], notThere: string[]): number | undefined =>
    rankSigns({ there, notThere }, all).candidates.find(({ id }) => id === 'p')?.points;
  fc.assert(
    fc.property(
      anyTrouble('p').map((trouble) => ({ ...trouble, mustReport: true })),
      anyPicked,
      (trouble, { there, notThere }) => {
        const before = pointsOf([trouble], there, notThere);
        for (const { sign, shows } of trouble.shown.filter((each) => !there.includes(each.sign) && !notThere.includes(each.sign))) {
          if (before === undefined) return;
          if (shows !== 'never') assert.ok(pointsOf([trouble], [...there, sign], notThere)! > before);
          assert.ok(pointsOf([trouble], there, [...notThere, sign])! <= before);
        }
      },
    ),
  );
});
