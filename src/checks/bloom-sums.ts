/* Checks a sum of degree-days in forage/: it states method, base and first day, in one scale, from the winter of this hemisphere. */
import { writtenMonthDay, type MonthDay } from '../../shared/days/month-day.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import type { Club } from '../schemas/club.ts';
import type { Forage } from '../schemas/forage.ts';
import type { ValidEntries, ValidEntry } from './fields.ts';
import { atField, type Message } from './place.ts';

/** Bases in use lie between freezing and mild. A number outside belongs to the other scale. */
const BASES = { F: { least: 25, most: 70 }, C: { least: -4, most: 21 } };

export const bloomSumFaults = (club: ValidEntries): Diagnostic[] =>
  club.of.forage.flatMap((entry) => (entry.data.bloom ? sumFaults(entry, entry.data.bloom, club.club?.data.hemisphere) : []));

function sumFaults(
  entry: ValidEntry<Forage>,
  bloom: NonNullable<Forage['bloom']>,
  hemisphere: Club['hemisphere'] | undefined,
): Diagnostic[] {
  const at = (field: string, message: Omit<Message, 'rule' | 'field'> | null): Diagnostic[] =>
    message ? [atField(entry, ['bloom', field], { rule: 'bloom', field: `bloom, ${field}`, ...message })] : [];
  return [
    ...at('degree-days', bloom['degree-days'] > 0 ? null : { found: String(bloom['degree-days']), write: 'a sum over 0' }),
    ...at('base', baseSaid(bloom)),
    ...at(bloom.cap === undefined ? 'method' : 'cap', capSaid(bloom)),
    ...at('from', fromSaid(bloom.from, hemisphere)),
  ];
}

/** A sum in the other scale stays in that scale. Nobody converts it by hand. */
function baseSaid({ base, scale }: NonNullable<Forage['bloom']>): Omit<Message, 'rule' | 'field'> | null {
  const { least, most } = BASES[scale];
  return base >= least && base <= most
    ? null
    : {
        found: `${base} with scale ${scale}`,
        write: `base, sum and scale as the list prints them, in one scale: from ${least} to ${most} in ${scale}`,
      };
}

function capSaid({ method, cap, base }: NonNullable<Forage['bloom']>): Omit<Message, 'rule' | 'field'> | null {
  if (method === 'modified' && cap === undefined)
    return { found: '"modified" without a cap', write: 'a line "cap:" as well, such as 86 in F' };
  if (cap === undefined) return null;
  if (method !== 'modified' && method !== 'sine')
    return { found: `${cap} for the method ${method}`, write: 'no cap, or the method modified or sine' };
  return cap > base ? null : { found: `${cap}, which is not over the base of ${base}`, write: 'a higher cap' };
}

function fromSaid(from: MonthDay, hemisphere: Club['hemisphere'] | undefined): Omit<Message, 'rule' | 'field'> | null {
  if (hemisphere === undefined) return null;
  const month = Number(from.slice(0, 2));
  const winter = hemisphere === 'north' ? month >= 11 || month <= 4 : month >= 5 && month <= 10;
  if (winter) return null;
  const other = hemisphere === 'north' ? '"01-01" and a northern sum' : '"07-01" and a southern sum';
  return {
    found: `a sum counted from ${writtenMonthDay(from)}, in summer or fall here`,
    write: `${other}: a list of the other half of the world cannot be turned round`,
  };
}
