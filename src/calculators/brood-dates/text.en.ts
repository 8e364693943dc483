/* Words of the brood dates calculator. */
import type { BroodDates, BroodPair, Seen } from '../../../shared/brood/dates.ts';
import { development, queenAfterEmerging, type Caste, type Span } from '../../../shared/brood/development.ts';
import type { Language } from '../../../shared/country/language.ts';
import type { Day } from '../../../shared/days/day.ts';
import { formatDay, formatDayRange } from '../../../shared/days/show-day.ts';
import { formatExact } from '../../../shared/numbers/show-number.ts';
import type { Event, Look, Stage } from './model.ts';

export const stageNames: Readonly<Record<Event, string>> = {
  laid: 'Egg laid',
  sealed: 'Cell sealed',
  emerges: 'Bee emerges',
  mates: 'Queen mates',
  lays: 'Queen lays',
  'broodless-worker': 'No worker brood left',
  'broodless-drone': 'No drone brood left',
};

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);
const seenNames: Readonly<Record<Exclude<Seen, 'caged'>, (caste: Caste) => string>> = {
  egg: (caste) => `${capital(caste)} eggs`,
  open: (caste) => `Open ${caste} cells`,
  sealed: (caste) => `Sealed ${caste} cells`,
  emerging: (caste) => (caste === 'queen' ? 'A queen emerging' : `${capital(caste)}s emerging`),
};

export function headline({ caste, seen, date }: Look, dates: BroodDates, language: Language): string {
  if (dates.broodlessWorker && dates.broodlessDrone)
    return `Laying stopped on ${formatDay(date, language)}: the last workers emerge by ${formatDay(dates.broodlessWorker, language)}, the last drones by ${formatDay(dates.broodlessDrone, language)}.`;
  const found = `${seenNames[seen as Exclude<Seen, 'caged'>](caste)}, ${formatDay(date, language)}:`;
  if (dates.lays) return `${found} ${seen === 'emerging' ? 'she' : 'a queen from them'} lays ${rangeWords(dates.lays, language)}.`;
  return `${found} ${seen === 'emerging' ? 'they were laid' : 'they emerge'} ${rangeWords(seen === 'emerging' ? dates.laid : dates.emerges, language)}.`;
}

/** What was asked, in one line. */
export const questionWords = ({ caste, seen, date }: Look, language: Language): string =>
  seen === 'caged' ? `Laying stopped on ${formatDay(date, language)}` : `${seenNames[seen](caste)}, seen on ${formatDay(date, language)}`;

export const next = (what: Event, on: Day, language: Language): string =>
  `Next: ${stageNames[what].toLowerCase()}, ${formatDay(on, language)} at the earliest.`;
export const nextLook = (day: string): string => `All these days are past. Next look: the first warm, calm day from ${day}.`;
export const leaveShut = 'Leave a hive with a young queen shut until her eggs are due.';

export const rangeWords = ({ earliest, latest }: BroodPair, language: Language): string =>
  earliest === latest ? `on ${formatDay(earliest, language)}` : `from ${formatDayRange(earliest, latest, language)}`;

/** The calculation with its numbers: days from the egg, and what the observation narrows. */
export function sumWords({ caste, seen }: Look): string {
  const { hatchesDays, sealedDays, emergesDays } = development[caste];
  const { matesFromEggDays, laysFromEggDays } = queenAfterEmerging;
  const queen =
    caste === 'queen' ? ` She mates on day ${spanWords(matesFromEggDays)} and lays from day ${spanWords(laysFromEggDays)}.` : '';
  const days = `The day of laying is day 0. A ${caste} hatches from the egg on day ${hatchesDays}, is sealed on day ${spanWords(sealedDays)} and emerges on day ${spanWords(emergesDays)}.${queen}`;
  const age: Record<Seen, string> = {
    egg: `An egg is 0 to ${hatchesDays} days old.`,
    open: `An open cell is ${hatchesDays} to ${formatExact(sealedDays.most)} days old, and is sealed today or later.`,
    sealed: `A sealed cell is ${formatExact(sealedDays.least)} to ${formatExact(emergesDays.most)} days old, and emerges today or later.`,
    emerging: `A bee that emerges is ${spanWords(emergesDays)} days old.`,
    caged: `The last egg was laid on the day that laying stopped. Workers: + ${development.worker.emergesDays.most} days. Drones: + ${development.drone.emergesDays.most} days.`,
  };
  return `${days} ${age[seen]}${[sealedDays, emergesDays].some(({ least }) => !Number.isInteger(least)) ? ' Half days are rounded outward.' : ''}`;
}

export const spanWords = ({ least, most }: Span): string =>
  least === most ? formatExact(least) : `${formatExact(least)} to ${formatExact(most)}`;

/** What a box holds, as in "Choose which kind of bee it is." */
export const asked = { caste: 'which kind of bee it is', seen: 'what was seen', date: 'the day of the look' };

/** In place of a date, and before its latest day. */
export const dates = {
  queenOnly: 'Of a queen only.',
  stoppedOnly: 'Only where laying stopped.',
  to: (day: string): string => `to ${day}`,
};

export const chart = {
  stages: { laid: 'Laid', sealed: 'Sealed', emerges: 'Emerges', mates: 'Mates', lays: 'Lays' } satisfies Record<Stage, string>,
  stopped: 'laying stopped',
  seen: 'seen',
  label: 'Each stage as a bar from its earliest to its latest day, counted from the dashed line. The same days stand in the table.',
};

export const fields = {
  caste: 'Kind of bee',
  castes: { worker: 'Worker', queen: 'Queen', drone: 'Drone' } satisfies Record<Caste, string>,
  seen: 'What was seen',
  sights: {
    egg: 'Egg',
    open: 'Open cell with a larva',
    sealed: 'Sealed cell',
    emerging: 'Bee emerging',
    caged: 'Laying stopped: queen caged, gone or taken out',
  } satisfies Record<Seen, string>,
  date: 'Day of the look',
  dateHint: (such: string): string => `Such as ${such}. Of laying that stopped: the day it stopped.`,
};

export const example = {
  what: 'What',
  when: 'When',
  stages: {
    laid: 'when it was laid',
    sealed: 'a lid goes on',
    emerges: 'she bites her way out',
    mates: 'on warm, still days',
    lays: 'look for eggs then',
  } satisfies Record<Stage, string>,
  table: 'Days from the egg, the day of laying being 0',
  tableName: 'Days from the egg',
  kind: 'Kind',
  castes: { worker: 'worker', queen: 'queen', drone: 'drone' } satisfies Record<Caste, string>,
  hatches: 'Hatches',
  sealed: 'Sealed',
  emerges: 'Emerges',
};

export const background = {
  heading: 'What the dates rest on',
  windows: 'Printed tables differ by a day, so each date is a window. Half days are rounded outward.',
  mates: 'A queen mates {mates} after she emerges, and lays {lays} later.',
  eggs: 'That makes her first eggs day {day} from her own egg.',
  drone: 'A drone can mate {mature} after he emerges.',
  sealedOnly: 'Only sealed brood, no open larvae: no egg was laid for {days} or more.',
  swarm: 'The first swarm leaves about when the first queen cell is sealed, on day {day}.',
};
