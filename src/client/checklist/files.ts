/* Files of the checklist record: JSON that can be opened again, and a table of one checklist for a spreadsheet. Pure functions. */
import { csvText } from '../../../shared/csv.ts';
import { parseDay } from '../../../shared/days/day.ts';
import { err, ok, type Result } from '../../../shared/result.ts';
import type { Span } from './own-days.ts';
import { own, readState, VERSION, type ChecklistState, type Run } from './record.ts';
import * as text from './files.en.ts';

export const FORMAT = 'almanac-runs';

/** The whole record as the text of a file. */
export const asFile = (state: ChecklistState, club: string, saved: string): string =>
  `${JSON.stringify({ format: FORMAT, version: VERSION, club, saved, ...(state.yard && { yard: state.yard }), lists: state.lists }, null, 2)}\n`;

type Opened = Result<{ state: ChecklistState; saved: string }, 'not-a-record' | 'newer' | 'other-club'>;

export function fromFile(text: string, club: string): Opened {
  try {
    const value = JSON.parse(text.replace(/^\uFEFF/, '')) as { format?: string; club?: string; saved?: string };
    if (value.format !== FORMAT) return err('not-a-record');
    if (value.club !== club) return err('other-club');
    const { state, trouble } = readState(text.replace(/^\uFEFF/, ''));
    if (trouble) return err(trouble === 'newer' ? 'newer' : 'not-a-record');
    if (!isWhole(state)) return err('not-a-record');
    return ok({
      state: { version: VERSION, lists: state.lists, ...(typeof state.yard === 'string' && { yard: state.yard }) },
      saved: typeof value.saved === 'string' ? value.saved : '',
    });
  } catch {
    return err('not-a-record');
  }
}

/** Checks that every part has its type, because a wrong one would break the list each time it opens. Unknown parts may be anything. */
function isWhole({ lists }: ChecklistState): boolean {
  const isText = (value: unknown): boolean => typeof value === 'string';
  const isDay = (value: unknown): boolean => isText(value) && parseDay(value as string).ok;
  const isAbsentOr = (is: (value: unknown) => boolean, value: unknown): boolean => value === undefined || is(value);
  const each = (value: unknown, is: (each: unknown) => boolean): boolean =>
    typeof value === 'object' && value !== null && !Array.isArray(value) && Object.values(value).every(is);
  const texts = (value: unknown): boolean => each(value, isText);
  const isTick = (tick: unknown): boolean =>
    each(tick, () => true) && isDay((tick as { on: unknown }).on) && isText((tick as { of: unknown }).of);
  return Object.values(lists).every(
    ({ open, runs }) =>
      isText(open) &&
      Object.values(runs).every(
        ({ name, day, filed, shared, choices, ticks, notes, asked }) =>
          isText(name) &&
          isAbsentOr(isDay, day) &&
          isAbsentOr(isDay, filed) &&
          isAbsentOr(isText, shared) &&
          each(ticks, isTick) &&
          [choices, notes, asked].every((part) => isAbsentOr(texts, part)),
      ),
  );
}

export type TableStep = { readonly id: string; readonly words: string; readonly days: (run: Run) => Span | null };

/** One line for each step of each hive, with its dates. RFC 4180. A step that is no longer in the list is last, under its id. */
export function asTable(title: string, hives: readonly { name: string; run: Run }[], steps: readonly TableStep[]): string {
  const rows = hives.flatMap(({ name, run }) => {
    const gone = [...new Set([run.ticks, run.notes, run.asked].flatMap((held) => Object.keys(held ?? {})))]
      .filter((id) => !steps.some((step) => step.id === id))
      .map((id): TableStep => ({ id, words: text.noLongerHere(id), days: () => null }));
    return [...steps, ...gone].map(({ id, words, days }) => {
      const span = days(run);
      const note = [own(run.notes, id), own(run.asked, id)].filter(Boolean).join(' ');
      return [title, name, words, span?.from, span?.to, own(run.ticks, id)?.on, note];
    });
  });
  return csvText([['checklist', 'hive', 'step', 'due from', 'due by', 'done', 'note'], ...rows]);
}
