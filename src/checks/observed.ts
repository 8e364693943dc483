/*
 * Checks members' observations: each year once, each day in its year, and events in a possible order, such as no swarm before the first
 * drone.
 */
import { addDays, type Day } from '../../shared/days/day.ts';
import type { Correction } from '../../shared/result.ts';
import { anchorRules, type AnchorId, type AnchorRule } from '../../shared/season/anchors.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import type { ObservedYear } from '../schemas/climate.ts';
import type { Club } from '../schemas/club.ts';
import type { ValidEntries, ValidEntry } from './fields.ts';
import { atField } from './place.ts';

type Hemisphere = Club['hemisphere'];
type Written = { entry: ValidEntry; path: PropertyKey[]; before: string; rule: string };

export function observedFaults(club: ValidEntries): Diagnostic[] {
  const entry = club.club;
  const hemisphere = entry?.data.hemisphere ?? 'north';
  const ofClub = entry
    ? [
        { path: ['observed'] as PropertyKey[], before: '', observed: entry.data.observed ?? [] },
        ...entry.data.districts.map((district, index) => ({
          path: ['districts', index, 'observed'],
          before: `districts ${index + 1}, `,
          observed: district.observed ?? [],
        })),
      ]
    : [];
  return [
    ...ofClub.flatMap(({ path, before, observed }) => yearsFaults({ entry: entry!, path, before, rule: 'observed' }, observed, hemisphere)),
    ...club.of.forage.flatMap((plant) => bloomNotes(plant, hemisphere)),
  ];
}

function yearsFaults(written: Written, observed: readonly ObservedYear[], hemisphere: Hemisphere): Diagnostic[] {
  return [
    ...twinFaults(written, observed),
    ...observed.flatMap((year, index) =>
      anchorRules.flatMap((rule) => {
        const day = year[rule.id];
        const message = day === undefined ? null : (outOfYear(day, year.year, hemisphere) ?? outOfOrder(day, rule, year));
        return message ? [at(written, index, rule.id, message.found, message.write)] : [];
      }),
    ),
  ];
}

const at = ({ entry, path, before, rule }: Written, index: number, field: string, found: string, write: string): Diagnostic =>
  atField(entry, [...path, index, field], { rule, field: `${before}observed ${index + 1}, ${field}`, found, write });

function twinFaults(written: Written, observed: readonly { year: number }[]): Diagnostic[] {
  return observed.flatMap(({ year }, index) =>
    observed.findIndex((other) => other.year === year) === index ? [] : [at(written, index, 'year', `${year} again`, 'each year once')],
  );
}

/**
 * A hive's year runs from winter to winter: in the south from the middle of the named year into the next. A last cluster may come a month
 * later.
 */
function outOfYear(day: string, year: number, hemisphere: Hemisphere): Correction | null {
  const [first, last] = hemisphere === 'north' ? [`${year}-01-01`, `${year + 1}-01-31`] : [`${year}-06-01`, `${year + 1}-07-31`];
  return day >= first! && day <= last!
    ? null
    : { found: `${day} under year ${year}`, write: `a day from ${first} to ${last}, or another year` };
}

function outOfOrder(day: Day, { after }: AnchorRule, year: ObservedYear): Correction | null {
  const before = after === undefined ? undefined : year[after as AnchorId];
  if (after === undefined || before === undefined || before < day) return null;
  return {
    found: `${day}, which is not after ${after}, ${before}`,
    write: `a day from ${addDays(before, 1)}`,
  };
}

function bloomNotes(
  entry: ValidEntry<{ observed?: { year: number; first: string; last?: string | undefined }[] | undefined }>,
  hemisphere: Hemisphere,
): Diagnostic[] {
  const { observed = [] } = entry.data;
  const written: Written = { entry, path: ['observed'], before: '', rule: 'observed' };
  return [
    ...twinFaults(written, observed),
    ...observed.flatMap(({ year, first, last }, index) => {
      const message = outOfYear(first, year, hemisphere);
      if (message) return [at(written, index, 'first', message.found, message.write)];
      if (last === undefined || last >= first) return [];
      return [at(written, index, 'last', `${last}, before first, ${first}`, 'the later day as last')];
    }),
  ];
}
