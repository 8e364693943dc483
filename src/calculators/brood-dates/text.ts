/* Sentences and chart of the brood dates calculator. */
import type { BroodDates, BroodPair, Seen } from '../../../shared/brood/dates.ts';
import { development, queenAfterEmerging, type Caste, type Span } from '../../../shared/brood/development.ts';
import type { Language } from '../../../shared/country/language.ts';
import { daysBetween, type Day } from '../../../shared/days/day.ts';
import { formatDay, formatDayRange } from '../../../shared/days/show-day.ts';
import type { Drawing } from '../form/drawing.ts';
import { spanBars, type SpanBar } from '../form/span-bars.ts';

export type Look = { readonly caste: Caste; readonly seen: Seen; readonly date: Day };

export const castes: readonly Caste[] = ['worker', 'queen', 'drone'];
export const sights: readonly Seen[] = ['egg', 'open', 'sealed', 'emerging', 'caged'];

/** In the order of development. Only a queen has the last two. */
export const stages = ['laid', 'sealed', 'emerges', 'mates', 'lays'] as const;
export const stageNames: Readonly<Record<(typeof stages)[number], string>> = {
  laid: 'Egg laid',
  sealed: 'Cell sealed',
  emerges: 'Bee emerges',
  mates: 'Queen mates',
  lays: 'Queen lays',
};
const shortNames: Readonly<Record<(typeof stages)[number], string>> = {
  laid: 'Laid',
  sealed: 'Sealed',
  emerges: 'Emerges',
  mates: 'Mates',
  lays: 'Lays',
};

const seenNames: Readonly<Record<Exclude<Seen, 'caged'>, (caste: Caste) => string>> = {
  egg: (caste) => `${capital(caste)} eggs`,
  open: (caste) => `Open ${caste} cells`,
  sealed: (caste) => `Sealed ${caste} cells`,
  emerging: (caste) => (caste === 'queen' ? 'A queen emerging' : `${capital(caste)}s emerging`),
};

export function headline({ caste, seen, date }: Look, dates: BroodDates, language: Language): string {
  if (dates.broodlessWorker && dates.broodlessDrone) {
    return `Laying stopped on ${formatDay(date, language)}: the last workers emerge by ${formatDay(dates.broodlessWorker, language)}, the last drones by ${formatDay(dates.broodlessDrone, language)}.`;
  }
  const found = `${seenNames[seen as Exclude<Seen, 'caged'>](caste)}, ${formatDay(date, language)}:`;
  if (dates.lays) return `${found} ${seen === 'emerging' ? 'she' : 'a queen from them'} lays ${rangeWords(dates.lays, language)}.`;
  return `${found} ${seen === 'emerging' ? 'they were laid' : 'they emerge'} ${rangeWords(seen === 'emerging' ? dates.laid : dates.emerges, language)}.`;
}

/** What was asked, in one line. */
export function questionWords({ caste, seen, date }: Look, language: Language): string {
  return seen === 'caged'
    ? `Laying stopped on ${formatDay(date, language)}`
    : `${seenNames[seen](caste)}, seen on ${formatDay(date, language)}`;
}

/** The next date that is to come, in a sentence. Where all of them are past, undefined. */
export function nextDate(dates: BroodDates, today: Day, language: Language): string | undefined {
  const ahead = [
    ...stages.flatMap((stage) => (dates[stage] ? [{ what: stageNames[stage].toLowerCase(), on: dates[stage].earliest }] : [])),
    ...(dates.broodlessWorker ? [{ what: 'no worker brood left', on: dates.broodlessWorker }] : []),
    ...(dates.broodlessDrone ? [{ what: 'no drone brood left', on: dates.broodlessDrone }] : []),
  ]
    .filter(({ on }) => on >= today)
    .sort((a, b) => (a.on < b.on ? -1 : 1));
  return ahead[0] && `Next: ${ahead[0].what}, ${formatDay(ahead[0].on, language)} at the earliest.`;
}

export function rangeWords({ earliest, latest }: BroodPair, language: Language): string {
  return earliest === latest ? `on ${formatDay(earliest, language)}` : `from ${formatDayRange(earliest, latest, language)}`;
}

/** The calculation with its numbers: days from the egg, and what the observation narrows. */
export function sumWords({ caste, seen }: Look): string {
  const { hatchesDays, sealedDays, emergesDays } = development[caste];
  const { matesFromEggDays, laysFromEggDays } = queenAfterEmerging;
  const queen =
    caste === 'queen' ? ` She mates on day ${spanWords(matesFromEggDays)} and lays from day ${spanWords(laysFromEggDays)}.` : '';
  const days = `The day of laying is day 0. A ${caste} hatches from the egg on day ${hatchesDays}, is sealed on day ${spanWords(sealedDays)} and emerges on day ${spanWords(emergesDays)}.${queen}`;
  const age: Record<Seen, string> = {
    egg: `An egg is 0 to ${hatchesDays} days old.`,
    open: `An open cell is ${hatchesDays} to ${spanEnd(sealedDays)} days old, and is sealed today or later.`,
    sealed: `A sealed cell is ${sealedDays.least} to ${spanEnd(emergesDays)} days old, and emerges today or later.`,
    emerging: `A bee that emerges is ${spanWords(emergesDays)} days old.`,
    caged: `The last egg was laid on the day that laying stopped. Workers: + ${development.worker.emergesDays.most} days. Drones: + ${development.drone.emergesDays.most} days.`,
  };
  return `${days} ${age[seen]}${[sealedDays, emergesDays].some(({ least }) => !Number.isInteger(least)) ? ' Half days are rounded outward.' : ''}`;
}

export function spanWords({ least, most }: Span): string {
  return least === most ? String(least) : `${least} to ${most}`;
}

const spanEnd = ({ most }: Span): number => most;
const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

export function drawDates({ seen, date }: Look, dates: BroodDates): Drawing {
  const bars: SpanBar[] = stages.flatMap((stage) => {
    const pair = dates[stage];
    return pair
      ? [
          {
            label: shortNames[stage],
            from: daysBetween(date, pair.earliest),
            to: daysBetween(date, pair.latest),
            tone: stage === 'emerges' || stage === 'lays' ? 'watch' : '',
          },
        ]
      : [];
  });
  return spanBars(
    bars,
    seen === 'caged' ? 'laying stopped' : 'seen',
    'Each stage as a bar from its earliest to its latest day, counted from the dashed line. The same days stand in the table.',
  );
}
