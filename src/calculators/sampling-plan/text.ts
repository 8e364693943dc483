/* Sentences of the sampling plan. */
import { formatAgainst, formatNumber, plainDecimal, toDataValue } from '../../../shared/numbers/show-number.ts';
import type { Asked, Plan, SamplingFigures } from './model.ts';

export const noFigure = 'No figure for this club.';
export const whole = (value: number): string => formatNumber(value, { places: 0 });

export function headline({ beesNeeded, coloniesLeast: least, coloniesMost: most }: Plan, { mostBees }: SamplingFigures): string {
  if (beesNeeded > mostBees) return `That would take over ${whole(mostBees)} bees of one colony: more than it should give.`;
  if (least === undefined || most === undefined) return `Look at ${beesWords(beesNeeded)} from a colony.`;
  if (most === 1) return `Look at ${beesWords(beesNeeded)} from your colony.`;
  return `Look at ${beesWords(beesNeeded)} from each of ${least === most ? whole(most) : `${whole(least)} to ${whole(most)}`} colonies.`;
}

/** The number alone. No colony is asked for more than it should give. */
export const cellWords = ({ beesNeeded }: Plan, { mostBees }: SamplingFigures): string =>
  beesNeeded > mostBees ? `over ${whole(mostBees)}` : whole(beesNeeded);

export const neededWords = (plan: Plan, figures: SamplingFigures): string =>
  plan.beesNeeded > figures.mostBees ? `${cellWords(plan, figures)} bees.` : beesWords(plan.beesNeeded);

/** The requested certainty in a sentence. */
export function askedWords({ share, certainty, colonies }: Asked): string {
  const apiary = colonies === undefined ? '' : `, ${whole(colonies)} ${colonies === 1 ? 'colony' : 'colonies'}`;
  return `Wanted: to meet a mite ${plainDecimal(certainty)} times in 100 where ${plainDecimal(share)} % of bees carry one${apiary}.`;
}

/** What was asked, in one line. */
export function questionWords({ share, certainty, colonies }: Asked): string {
  const apiary = colonies === undefined ? '' : `, ${whole(colonies)} ${colonies === 1 ? 'colony' : 'colonies'}`;
  return `${plainDecimal(share)} % of bees with a mite, ${plainDecimal(certainty)} % sure${apiary}`;
}

export function beesWords(bees: number): string {
  return `${whole(bees)} ${bees === 1 ? 'bee' : 'bees'}`;
}

/** Never rounded across the requested certainty. */
export function missedWords(percent: number, { certainty }: Asked): string {
  return `${formatAgainst(percent, Number((100 - certainty).toPrecision(12)), 1)} %`;
}

export function samplesWords({ beesNeeded }: Plan, { usualBees, mostBees }: SamplingFigures): string {
  if (beesNeeded > mostBees)
    return `More than a colony should give: take no more than ${whole(mostBees)}. Ask for a larger share or for less certainty, or take a usual sample of ${whole(usualBees)} now and another in two weeks.`;
  const samples = Math.ceil(beesNeeded / usualBees);
  return samples === 1
    ? `One usual sample of ${whole(usualBees)} is enough.`
    : `That is ${whole(samples)} usual samples of ${whole(usualBees)}.`;
}

/** The reason for a missing number of colonies. */
export function noColonies(colonies: number | undefined): string {
  return colonies === undefined ? 'Write above how many colonies there are.' : noFigure;
}

/** The calculation with its numbers. */
export function sumWords(asked: Asked, { beesNeeded, missedPercent }: Plan): string {
  const { share, certainty } = asked;
  const clean = toDataValue(1 - share / 100);
  if (share === 100) return 'Every bee carries one, so the first bee shows it.';
  return `A bee without a mite comes with a chance of ${clean}. ${whole(beesNeeded)} such bees in a row: ${clean} to the power of ${whole(beesNeeded)} = ${toDataValue(Number((missedPercent / 100).toPrecision(3)))}, or ${missedWords(missedPercent, asked)}. One bee fewer would miss more often than the ${toDataValue(100 - certainty)} % allowed.`;
}
