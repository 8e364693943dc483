/* Table of one washed sample: the rate of each number of mites, and the verdict at each level of the club. */
import { phases as allPhases, type Phase } from '../../../shared/season/phases.ts';
import { judgeCount, type Counted, type Judgement, type MiteFigures } from './model.ts';

export type WashRow = { mites: number; rate: Judgement; verdicts: Judgement[] };
export type WashColumn = { phases: readonly Phase[]; levelPer100: number; isAllYear: boolean };

const MITES = [0, 1, 2, 3, 4, 6, 9, 12, 15, 20];

export const washed = (mites: number, bees: number, phase?: Phase): Counted => ({
  samples: [{ label: '', mites, bees }],
  method: 'wash',
  phase,
  recovery: 100,
});

/** @throws Error for a sample that cannot be. */
export function judgeWash(mites: number, bees: number, figures: MiteFigures, phase?: Phase): Judgement {
  const count = judgeCount(washed(mites, bees, phase), figures);
  if (!count.ok) throw new Error(`mite-count: needs a sample that can be, got ${mites} in ${bees}`);
  return count.value;
}

/** One row for each number of mites, one verdict for each level. */
export function washTable(bees: number, figures: MiteFigures, phase?: Phase): { columns: WashColumn[]; rows: WashRow[] } {
  const columns = figures.levels.map(({ phases, levelPer100 }) => ({ phases, levelPer100, isAllYear: phases.length === allPhases.length }));
  const rows = MITES.map((mites) => ({
    mites,
    rate: judgeWash(mites, bees, figures, phase),
    verdicts: columns.map(({ phases }) => judgeWash(mites, bees, figures, phases[0])),
  }));
  return { columns, rows };
}
