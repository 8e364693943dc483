/* Words of the mite count. */
import { phaseName, type Phase } from '../../../shared/season/phases.ts';
import type { MiteCount } from '../../../shared/mites/mite-count.ts';
import type { MiteSample } from '../../../shared/mites/rate.ts';
import type { Verdict } from '../../../shared/mites/verdict.ts';
import { formatExact, formatNumber } from '../../../shared/numbers/show-number.ts';
import { onlyCorrected, rateWords, type Counted, type Judgement, type Level, type Lines, type Method, type MiteFigures } from './model.ts';

const whole = (value: number): string => formatNumber(value, { places: 0 });

export const verdictNames: Readonly<Record<Verdict, string>> = { below: 'Below', unsure: 'Unsure', act: 'Act' };
/** Beside a row of the chart, where a narrow screen has little room. */
export const atOnceShort = 'At once';
const atOnceName = 'Act at once';
export const noVerdict = 'No verdict';

export const rangeWords = (low: number, high: number, lines: Lines): string => `${rateWords(low, lines)} to ${rateWords(high, lines)}`;

export const verdictWords = (verdict: Verdict | undefined, atOnce: boolean): string =>
  verdict === undefined ? '' : atOnce ? atOnceName : verdictNames[verdict];

export function headline(judgement: Judgement): string {
  const { count, atOnce } = judgement;
  const [first] = count.colonies;
  const rate = (per100: number) => `${rateWords(per100, judgement)} mites per hundred bees`;
  if (!count.verdict) return `${rate((count.apiary ?? first!).per100)}.`;
  const hurry = count.coloniesAtOnce.length > 0;
  if (!count.apiary)
    return `${rate(first!.per100)}: ${verdictWords(count.verdict, hurry).toLowerCase()}${count.verdict === 'below' ? ' the level' : ''}.`;
  if (hurry)
    return `Act at once: ${named(count.coloniesAtOnce, true)} at or over ${formatExact(atOnce!.levelPer100)} mites per hundred bees.`;
  const labels = count.colonies.filter(({ verdict }) => verdict === count.verdict).map(({ label }) => label);
  if (count.verdict === 'act') return `Act: ${named(labels, true)} at or over the level.`;
  if (count.verdict === 'below') return 'Every colony is below the level, and so are all together.';
  return labels.length > 0 ? `Unsure: ${named(labels)} may be over the level.` : 'Unsure: all together may be over the level.';
}

/** "colony A", "colonies A, B and C", "7 colonies". `verb`: with "is" or "are". */
function named(names: readonly string[], verb = false): string {
  const one = names.length === 1;
  const shown =
    names.length > 6
      ? `${names.length} colonies`
      : `${one ? 'colony' : 'colonies'} ${names.slice(0, -1).join(', ')}${one ? '' : ' and '}${names.at(-1)}`;
  return verb ? `${shown} ${one ? 'is' : 'are'}` : shown;
}

/** The reason for a missing level. */
export const noLevel = ({ levels }: MiteFigures, phase: Phase | undefined): string =>
  levels.length === 0 || !phase ? 'No level here.' : `No level for this part of the year, ${phaseName(phase)}.`;

export function verdictReason({ count, level, atOnce }: Judgement): string {
  if (!level) return 'Without a level there is no verdict.';
  if (count.coloniesAtOnce.length > 0)
    return `The count is at or over ${formatExact(atOnce!.levelPer100)} per hundred bees, where no time is left to lose.`;
  if (count.verdict === 'act') return 'The count is at or over the level.';
  if (count.verdict === 'below') return 'The whole likely range is under the level.';
  if (count.colonies.every(({ mites }) => mites === 0)) return 'No mite was found, but so few bees cannot rule the level out.';
  return onlyCorrected(count)
    ? 'As counted it is under the level. Corrected for missed mites, it is not.'
    : 'The count is under the level, but its likely range reaches the level.';
}

/** What a reader must know about the level itself. */
export function levelRemarks(level: Level | undefined, { method, phase }: Counted): string {
  if (!level) return '';
  const part = phase ? '' : 'No part of the year was chosen, so this is the strictest of the levels. ';
  if (level.method === method) return part;
  return `${part}${level.method ? `It was set with another method (${level.method}).` : 'It does not say that it was set with this method.'}`;
}

export function settleWords(settle: MiteCount['toSettle'], counted: readonly MiteSample[], { mostBees }: MiteFigures): string {
  if (!settle) return 'Not needed.';
  const where = counted.length > 1 ? ` from colony ${settle.label}` : '';
  if (settle.bees === 'too-many') return `It would take over ${whole(mostBees)} bees${where}: more than a colony should give.`;
  return `About ${whole(settle.bees)} bees${where} in all, at this rate, would settle it.`;
}

/** The advice that follows from each verdict. */
export function nextStep({ count, level }: Judgement, { phase }: Counted): string {
  if (!level) return 'Write the count down. The club has no level here, so ask before you treat.';
  if (count.coloniesAtOnce.length > 0)
    return 'Treat within days, as your label, the weather and the honey boxes allow. Count every other hive in the yard.';
  if (count.verdict === 'act')
    return 'Choose a treatment now that your label, the weather and the honey boxes allow. Count the other hives too.';
  if (count.verdict === 'unsure') {
    const settles = count.toSettle?.bees;
    if (typeof settles === 'number')
      return 'Take a second sample from the same colony today and add the two together, or count again in two weeks.';
    return settles === 'too-many'
      ? 'Treat it as “act”, or count again in two weeks: by then mites that grow will show.'
      : 'Count again in two weeks.';
  }
  const late = phase === 'dearth' || phase === 'fall-preparation' ? ' At this time of year mites also come in from other hives.' : '';
  return `This count does not call for a treatment.${late}`;
}

/** The next count. Without a day, the label of a treatment decides. */
export const nextCount = (day: string | undefined): string =>
  day === undefined ? 'Next count: when the treatment time on your label is over. Write that day down.' : `Next count: by ${day}.`;

const methodNames: Readonly<Record<Method, string>> = { wash: 'alcohol wash', roll: 'sugar roll', gas: 'carbon dioxide' };

/** What was asked, in one line. */
export function askedWords({ samples, method, phase, recovery }: Counted): string {
  const [first] = samples;
  const counted =
    samples.length > 1
      ? `${samples.length} colonies`
      : `${first!.label ? `${first!.label}: ` : ''}${whole(first!.mites)} ${first!.mites === 1 ? 'mite' : 'mites'} in ${whole(first!.bees)} bees`;
  const adjusted = recovery === 100 ? '' : `, adjusted for ${formatExact(recovery)} % found`;
  return `${counted}, ${methodNames[method]}, ${phase ? phaseName(phase) : 'part of the year not chosen'}${adjusted}`;
}

export const noFigure = 'No figure for this club.';
export const weeksReasons: Readonly<Record<MiteCount['weeks']['state'], string>> = {
  'already-there': 'Already there.',
  'no-brood': 'Without brood mites do not grow, so there is no date.',
  'no-level': 'Without a level there is no date.',
  'no-mites': 'No mites were found, so no latest can be said.',
  weeks: '',
};

/** `reached`: the likely range of a colony already includes the level. */
export function soonestWords(weeks: number, reached: boolean): string {
  if (weeks > 0) return `In ${inWeeks(weeks)} at the soonest.`;
  return reached ? 'It may be there now.' : 'Within a week at the soonest.';
}

export const latestWords = (weeks: number): string =>
  weeks === 0 ? 'Within a week at the latest.' : `In ${inWeeks(weeks)} at the latest.`;

const inWeeks = (weeks: number): string => `${whole(weeks)} ${weeks === 1 ? 'week' : 'weeks'}`;

/** The calculation with its numbers. */
export function sumWords(judgement: Judgement, recovery: number): string {
  const { colonies, apiary } = judgement.count;
  const [first] = colonies;
  if (!apiary) {
    const corrected =
      first!.per100Corrected === undefined
        ? ''
        : ` If only ${formatExact(recovery)} % of the mites were found: ${rateWords(first!.per100, judgement)} ÷ ${formatExact(recovery / 100)} = ${rateWords(first!.per100Corrected, judgement)}.`;
    return `100 × ${whole(first!.mites)} ÷ ${whole(first!.bees)} = ${rateWords(first!.per100, judgement)}. A count of ${whole(first!.mites)} can stand for a true rate from ${rangeWords(first!.lowPer100, first!.highPer100, judgement)}.${corrected}`;
  }
  const all = (of: 'mites' | 'bees') =>
    colonies.length > 6 ? whole(colonies.reduce((sum, one) => sum + one[of], 0)) : `(${colonies.map((one) => whole(one[of])).join(' + ')})`;
  return `All together: 100 × ${all('mites')} ÷ ${all('bees')} = ${rateWords(apiary.per100, judgement)}. Each colony in the same way: 100 × mites ÷ bees.`;
}

export function apiaryRemarks(apiary: MiteCount['apiary'], colonies: number, fewest: number | null): string {
  if (!apiary) return '';
  const range = {
    'log-limits': '',
    'all-zero': 'The range of no mites at all is the least careful one. ',
    'too-few-colonies': 'A range for all together needs four colonies or more. ',
  }[apiary.range];
  return range + (fewest !== null && colonies < fewest ? `${colonies} colonies show an apiary poorly: ${fewest} or more are better.` : '');
}

export const recovery = {
  asked: 'a share from 1 to 100, such as 92.9',
  impossible: 'The share of mites found lies over 0 and up to 100.',
};

/** Pieces of the table of colonies, whose numbers are outputs. */
export const cells = {
  corrected: 'corrected',
  to: 'to',
  upTo: (rate: string): string => `to ${rate}`,
  miteInBees: (mites: number, bees: number): string => `${whole(mites)} in ${whole(bees)}`,
  noRange: 'none under four colonies',
  per100: (level: number): string => `${formatExact(level)} per 100 bees`,
  noAtOnce: 'None for this part of the year.',
  none: 'None',
};

export const chart = {
  all: 'All',
  level: (per100: number): string => `the club’s level, ${formatExact(per100)}`,
  label:
    'Mites per hundred bees: a mark is the count, the line through it its likely range, the dashed line the level. The table has the same numbers.',
};

export const fields = {
  rows: 'One line per colony. Names are optional.',
  phaseWithLevels: 'Set from today’s date. You can change it. If none is chosen, the strictest of the club’s levels counts.',
  more: 'More options',
  moreOf: 'missed mites',
  recovery: 'Adjust for missed mites, %',
  recoveryHint: 'Leave it at 100 for no adjustment.',
};

export const result = {
  heading: 'Mites per hundred bees',
  chart: 'A mark is the count, and the line through it the likely range.',
  numbers: 'The numbers',
  table: 'Each colony',
  colony: 'Colony',
  mites: 'Mites',
  per100: 'Per 100',
  range: 'Likely range',
  verdict: 'Verdict',
  all: 'All',
  larger: 'A larger sample',
  weeks: 'Weeks to the level, if nothing is done',
};

export const levels = {
  followed: 'The level the club follows',
  atOnce: 'Act at once from',
  over: 'Colonies at or over the level',
};

export const allYear = 'all year';

export const example = {
  worked: (mites: number, bees: number, phase: string | undefined): string =>
    `${mites} mites in a wash of ${bees} bees${phase ? `, in ${phase}` : ''}.`,
  level: (per100: number): string => `The club then follows ${formatExact(per100)} per 100 bees{source}.`,
  next: (step: string): string => `**What to do next:** ${step}`,
  table: (bees: number): string => `Mites in ${bees} bees`,
  verdictAt: (per100: number): string => `Verdict, level ${formatExact(per100)}`,
};

export const background = {
  noLevel: 'No level here',
  noVerdict: (asked: string | undefined): string =>
    `We found no level for this place, so this page calculates the count and its likely range, but gives no verdict. Ask ${asked ?? 'experienced beekeepers near you'} from what count to act.`,
  how: 'How the verdict is found',
  atOnce: '**Act at once:** the count is so high that no time is left to lose.',
  verdicts: [
    '**Act:** the count is at or over the level.',
    '**Unsure:** the count is under the level, but the likely range reaches it.',
    '**Below:** the whole likely range is under the level.',
    'Of several colonies the worst one decides, so that an average hides none.',
    'A correction for missed mites never makes a verdict milder.',
    'At a level of 1, a sample of 300 bees is too small for “below”, even without a mite in it.',
  ],
  most: (bees: number): string => `No one colony is asked for more than ${bees} bees.`,
  levels: '**The club’s levels:** {levels}.',
  levelIn: (phases: readonly string[]): string => `{level} in ${phases.join(', ')}`,
  range:
    'The likely range holds the true rate 19 times in 20. For one colony it is the exact limits of a count. For all together it allows for mites clumping in some colonies.',
  growth: (slowest: string, fastest: string): string => `Weeks come from two rates of growth, ${slowest} and ${fastest} % a day{source}.`,
  others: 'Levels other groups use',
  differ: 'They differ, because places, years and methods do. The club goes by its own.',
  otherIn: (phases: readonly string[] | undefined): string => `{level} ${phases ? `in ${phases.join(' and ')}` : allYear}:`,
};
