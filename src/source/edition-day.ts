/* The day of an edition: what was asked for, or the newest day on which anything was checked, changed or withdrawn. Never the clock. */
import type { Folder } from './folder.ts';

const DAY = /^\d{4}-\d\d-\d\d$/;

/** `asked` (--edition), else SOURCE_DATE_EPOCH, else the newest `checked:`, `changed:` or `withdrawn:` in the content. */
export function editionDay(folder: Folder, asked?: string | undefined, epoch = process.env.SOURCE_DATE_EPOCH): string {
  if (asked) return asked;
  if (epoch && /^\d+$/.test(epoch)) return new Date(Number(epoch) * 1000).toISOString().slice(0, 10);
  const entries = folder.club ? [folder.club, ...folder.entries] : folder.entries;
  return (
    entries
      .flatMap((entry) => daysIn(entry.fields.value, false))
      .sort()
      .at(-1) ?? '1970-01-01'
  );
}

function daysIn(value: unknown, counts: boolean): string[] {
  if (typeof value === 'string') return counts && DAY.test(value) ? [value] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, held]) =>
    daysIn(
      key === 'withdrawn' && typeof held === 'string' ? { changed: held.slice(0, 10) } : held,
      key === 'checked' || key === 'changed' || (counts && Array.isArray(value)),
    ),
  );
}
