/* Checks the season that the club's values give: every phase has a date, phases are in order, and every basis of an anchor is usable. */
import { addMonthDays, writtenMonthDay } from '../../shared/days/month-day.ts';
import type { Correction } from '../../shared/result.ts';
import { anchorName } from '../../shared/season/when.ts';
import { anchorRules, type AnchorDate } from '../../shared/season/anchors.ts';
import { phaseName, phases, type Phase } from '../../shared/season/phases.ts';
import { phaseStarts } from '../../shared/season/year.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import { daysOfYear, districtsOf, type District, type FigureOf } from '../schemas/as-season.ts';
import type { Club } from '../schemas/club.ts';
import type { ValidEntries, ValidEntry } from './fields.ts';
import { nearName } from '../../shared/words/near-name.ts';
import { atField, isDraft, isWithdrawn } from './place.ts';
import { writtenYearFaults } from './written-year.ts';

const dated = new WeakMap<ValidEntries, District[]>();

/** The districts with the dates that pages will show. Empty where club.yaml itself is not valid. */
export function districtsIn(club: ValidEntries): District[] {
  const held = dated.get(club);
  if (held || !club.club) return held ?? [];
  const forage = club.of.forage.filter((entry) => !isDraft(entry) && !isWithdrawn(entry));
  const districts = districtsOf({ club: club.club.data, forage, figureOf: newestRow(club) });
  dated.set(club, districts);
  return districts;
}

/** The latest row in force of each figure. */
function newestRow(club: ValidEntries): FigureOf {
  const figures = new Map(club.of.figures.map(({ id, data }) => [id, data]));
  return (id, row) => {
    const figure = figures.get(id);
    const held = figure?.rows.filter((each) => each.id === (row ?? figure.follows)).at(-1);
    return figure && held ? { ...held, unit: figure.unit } : null;
  };
}

export function seasonFaults(club: ValidEntries): Diagnostic[] {
  const entry = club.club;
  if (!entry) return [];
  const districts = districtsIn(club);
  const written = [...writtenYearFaults(entry), ...guessFaults(entry), ...bloomFaults(entry, club, districts)];
  return [
    ...written,
    ...(written.length > 0
      ? []
      : (districts.map((district, index) => orderFaults(entry, district, index)).find((faults) => faults.length > 0) ?? [])),
  ];
}

const at = (entry: ValidEntry, path: PropertyKey[], field: string, found: string, write: string): Diagnostic =>
  atField(entry, path, { rule: 'season', field, found, write });

function guessFaults(entry: ValidEntry<Club>): Diagnostic[] {
  const { guesses = {}, published = {} } = entry.data.season;
  const written: [path: string[], text: string | undefined][] = [
    ...Object.entries(guesses).map(([anchor, text]): [string[], string | undefined] => [['guesses', anchor], text]),
    ...Object.entries(published).map(([anchor, given]): [string[], string | undefined] => [['published', anchor, 'days'], given?.days]),
  ];
  return written.flatMap(([path, text]) =>
    text === undefined || daysOfYear(text)
      ? []
      : [at(entry, ['season', ...path], `season, ${path.join(', ')}`, `"${text}"`, 'a day, or two days such as "1 April to 20 April"')],
  );
}

const WHY = {
  'no-sum': 'which has neither a sum nor three years of notes',
  'no-method': 'whose list does not say how it counts',
  'no-normals': 'whose sum needs the monthly normals of the place',
  'no-spread': 'whose sum needs to know how much days differ from year to year',
  'no-doubt': 'whose sum needs the figure degree-day-window-days',
  'not-reached': 'whose sum is not reached in a normal year here',
} as const;

/** The plant that is the sign of an anchor exists and blooms here. */
function bloomFaults(entry: ValidEntry<Club>, club: ValidEntries, districts: readonly District[]): Diagnostic[] {
  return Object.entries(entry.data.season['by-bloom'] ?? {}).flatMap(([anchor, plant]) => {
    if (plant === undefined) return [];
    const message = (found: string, write: string): Diagnostic[] => [
      at(entry, ['season', 'by-bloom', anchor], `season, by-bloom, ${anchor}`, `"${plant}", ${found}`, write),
    ];
    const near = nearName(plant, club.ids.forage);
    if (!club.ids.forage.has(plant)) return message('which is not in forage/', near ? `"${near}"` : 'the name of a file in forage/');
    const bloom = districts[0]?.blooms.find((each) => each.plant === plant)?.bloom;
    return !bloom || bloom.ok ? [] : message(WHY[bloom.reason], 'a plant that this club can date');
  });
}

function orderFaults(entry: ValidEntry<Club>, district: District, index: number): Diagnostic[] {
  const { days } = district;
  const part = phases.find((phase) => !days.ok && phase === days.text);
  if (days.ok || !part) return [];
  if (days.reason === 'no-date') return index > 0 ? [] : [lacking(entry, part)];
  const before = phases[(phases.indexOf(part) + phases.length - 1) % phases.length]!;
  const [from, earlier] = [startOf(part, district), startOf(before, district)];
  const where = index === 0 ? '' : ` in ${district.name}`;
  return [
    at(
      entry,
      ['season'],
      'season',
      `${phaseName(part)} from ${from}, which is not after ${phaseName(before)} from ${earlier}${where}`,
      `dates of the year in the order of its parts: ${phases.map(phaseName).join(', ')}`,
    ),
  ];
}

function lacking(entry: ValidEntry<Club>, part: Phase): Diagnostic {
  const { anchor } = phaseStarts[part];
  return at(
    entry,
    ['season'],
    'season',
    `no date for the start of ${phaseName(part)}`,
    `"${anchor}" of three years under observed, a guess for it under guesses, or all parts of the year under phases`,
  );
}

function startOf(phase: Phase, { anchors }: District): string {
  const { anchor, offsetDays } = phaseStarts[phase];
  const date: AnchorDate | undefined = anchors[anchor];
  return date ? `${writtenMonthDay(addMonthDays(date.expected, offsetDays))} (${BASES[date.basis.kind]})` : 'no day';
}

const BASES = {
  observed: "members' dates",
  published: 'a published date',
  printed: 'a published date',
  'degree-days': 'degree-days',
  'bloom-seen': "members' dates",
  temperature: 'monthly normals',
  shifted: "the main district's, moved",
  guess: 'a guess',
} as const;

/** An anchor that a `when` counts from and that has no date. */
export function undated(anchors: readonly string[], districts: readonly District[]): Correction | null {
  const main = districts[0];
  if (!main?.days.ok) return null;
  const { anchors: known } = main.days.value;
  const lacks = anchors.find((anchor) => !(anchor in known));
  if (lacks === undefined) return null;
  const rule = anchorRules.find(({ id }) => id === lacks);
  return {
    found: `${anchorName(lacks)}, which this club has no date for`,
    write: `a guess in club.yaml, "season: guesses: ${rule?.id ?? lacks}:", or another day of the year`,
  };
}
