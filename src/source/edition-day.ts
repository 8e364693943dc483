/* Day of an edition: the requested day, or the newest day on which anything was checked, changed or withdrawn. The clock is never read. */
import { dayOf, isDay, type Day } from '../../shared/days/day.ts';
import { todayIn } from '../../shared/days/today.ts';
import type { Folder } from './folder.ts';

/** `asked` (--edition), then SOURCE_DATE_EPOCH, then the newest `checked:`, `changed:` or `withdrawn:` in the content. */
export function editionDay(folder: Folder, asked?: Day | undefined, epoch = process.env.SOURCE_DATE_EPOCH): Day {
  if (asked) return asked;
  if (epoch && /^\d+$/.test(epoch)) return todayIn('UTC', new Date(Number(epoch) * 1000));
  const entries = folder.club ? [folder.club, ...folder.entries] : folder.entries;
  return (
    entries
      .flatMap((entry) => daysIn(entry.fields.value, false))
      .sort()
      .at(-1) ?? dayOf(1970, 1, 1)
  );
}

function daysIn(value: unknown, counts: boolean): Day[] {
  if (typeof value === 'string') return counts && isDay(value) ? [value] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, held]) =>
    daysIn(
      key === 'withdrawn' && typeof held === 'string' ? { changed: held.slice(0, 10) } : held,
      key === 'checked' || key === 'changed' || (counts && Array.isArray(value)),
    ),
  );
}
