/* Tasks of each district with first and last day, for the season calendars. */
import type { MonthDay } from '../../shared/days/month-day.ts';
import type { Almanac } from './content.ts';
import { windowsOf } from './season.ts';

/** What a district's members are to do, and when. Days are written as 05-03 and come back every year. */
export type Task = {
  list: string;
  title: string;
  why: string;
  from: MonthDay;
  to: MonthDay;
  /** Where the days come from. */
  basis: string | null;
  changes: number;
};
export type SeasonTasks = { district: string; name: string; tasks: Task[] };

/** A change to the dates of the season counts as a change to every task. */
export function seasonTasks({ checklists, seasons, club }: Almanac): SeasonTasks[] {
  return seasons.map((season) => ({
    district: season.id,
    name: season.name,
    tasks: checklists.flatMap(({ id, data }) => {
      const window = windowsOf(data.when, [season])?.[0];
      if (!window) return [];
      return [
        {
          list: id,
          title: data.title,
          why: data.why,
          ...window.window,
          basis: window.basis,
          changes: (data.history?.length ?? 0) + (club.season.history?.length ?? 0),
        },
      ];
    }),
  }));
}
