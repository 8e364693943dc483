/* Words of the sampling plan. */
import { formatAgainst, formatExact, formatNumber } from '../../../shared/numbers/show-number.ts';
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

const apiaryOf = (colonies: number | undefined): string =>
  colonies === undefined ? '' : `, ${whole(colonies)} ${colonies === 1 ? 'colony' : 'colonies'}`;

/** The requested certainty in a sentence. */
export const askedWords = ({ share, certainty, colonies }: Asked): string =>
  `Wanted: to meet a mite ${formatExact(certainty)} times in 100 where ${formatExact(share)} % of bees carry one${apiaryOf(colonies)}.`;

/** What was asked, in one line. */
export const questionWords = ({ share, certainty, colonies }: Asked): string =>
  `${formatExact(share)} % of bees with a mite, ${formatExact(certainty)} % sure${apiaryOf(colonies)}`;

export const beesWords = (bees: number): string => `${whole(bees)} ${bees === 1 ? 'bee' : 'bees'}`;

/** Never rounded across the requested certainty. */
export const missedWords = (percent: number, { certainty }: Asked): string =>
  `${formatAgainst(percent, Number((100 - certainty).toPrecision(12)), 1)} %`;

export function samplesWords({ beesNeeded }: Plan, { usualBees, mostBees }: SamplingFigures): string {
  if (beesNeeded > mostBees)
    return `More than a colony should give: take no more than ${whole(mostBees)}. Ask for a larger share or for less certainty, or take a usual sample of ${whole(usualBees)} now and another in two weeks.`;
  const samples = Math.ceil(beesNeeded / usualBees);
  return samples === 1
    ? `One usual sample of ${whole(usualBees)} is enough.`
    : `That is ${whole(samples)} usual samples of ${whole(usualBees)}.`;
}

/** The reason for a missing number of colonies. */
export const noColonies = (colonies: number | undefined): string =>
  colonies === undefined ? 'Write above how many colonies there are.' : noFigure;
export const upTo = (colonies: number): string => `to ${whole(colonies)}`;

/** The calculation with its numbers. */
export function sumWords(asked: Asked, { beesNeeded, missedPercent }: Plan): string {
  const { share, certainty } = asked;
  if (share === 100) return 'Every bee carries one, so the first bee shows it.';
  const clean = formatExact(1 - share / 100);
  return `A bee without a mite comes with a chance of ${clean}. ${whole(beesNeeded)} such bees in a row: ${clean} to the power of ${whole(beesNeeded)} = ${formatExact(Number((missedPercent / 100).toPrecision(3)))}, or ${missedWords(missedPercent, asked)}. One bee fewer would miss more often than the ${formatExact(100 - certainty)} % allowed.`;
}

export const says = {
  tooMany: (usualBees: number): string => `Take ${whole(usualBees)} bees now and another sample in two weeks. Add the two together.`,
  sample: 'Sample every colony on the same day, then enter what you counted.',
};
export const again = {
  tooMany: (day: string): string => `Second sample: ${day}.`,
  sample: (day: string): string => `Next round of counts: by ${day}.`,
};

/** What a box holds, as in "Write how many colonies stand in the apiary." */
export const asked = {
  share: 'the share of bees with a mite, such as 1',
  certainty: 'how sure you want to be, such as 95',
  colonies: 'how many colonies stand in the apiary',
};

export const faults = {
  'impossible-share': 'The share lies over 0 and up to 100 %.',
  'impossible-certainty': 'It lies over 0 and under 100 %. No sample makes it quite certain.',
  'no-colonies': 'Write 1 or more colonies, or leave it empty.',
  'colonies-not-whole': 'Write whole colonies.',
};
export const tooRare = (percent: number): string => `A share under ${formatExact(percent)} % cannot be found with the bees of one colony.`;

export const chart = 'A bar for each number of bees: of 100 such samples so many meet no mite. The dashed line is what you allow.';

export const fields = {
  share: 'With a mite, %',
  shareHint: 'Of all the bees.',
  certainty: 'How sure, %',
  certaintyHint: '95: 19 in 20.',
  colonies: 'Colonies in the apiary',
  coloniesHint: 'You can leave it empty.',
};

export const result = {
  heading: 'The numbers',
  bees: 'Bees from a colony',
  missed: 'Samples like this that find no mite all the same',
  colonies: 'Colonies to sample',
  chart: 'How often a sample misses',
  axes: 'At the left, the bees. Below, the samples of 100 that meet no mite.',
};

export const example = {
  axes: 'At the left, the bees in a sample. Below, the samples of 100 that meet no mite.',
  table: 'Bees to look at in one colony',
  share: 'With a mite',
  sure: (certainty: number): string => `${formatExact(certainty)} % sure`,
  most: ({ usualBees, mostBees }: SamplingFigures): string =>
    `No colony should give more than ${whole(mostBees)} bees. Take ${whole(usualBees)} now, and ${whole(usualBees)} more in two weeks.`,
};

export const background = {
  draw: 'Each bee is taken as a draw from one well-mixed colony. The number is the smallest at which bees without a mite come in a row too rarely.',
  colonies:
    'Colonies follow two published habits. One study found {least} enough, however large the apiary. A national plan asks all of them under ten, and else {most}.',
};
