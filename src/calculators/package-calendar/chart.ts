/* Chart of the package calendar: the bees in the hive, day by day. */
import type { PopulationCurve } from '../../../shared/packages/curve.ts';
import { band } from '../form/band.ts';
import type { Drawing } from '../form/drawing.ts';
import { beesWords, whole } from './bees.ts';
import * as text from './text.en.ts';

export function drawCurve({ days }: PopulationCurve, beesAtStart: number): Drawing {
  return band(
    days.map(({ beesLeast, beesMost }) => ({ least: beesLeast, most: beesMost })),
    { at: beesAtStart, words: text.atStart(beesWords(beesAtStart)) },
    whole,
    text.chartLabel,
  );
}
