/* Tasks of each district with first and last day, for the season calendars. */
import type { Almanac } from './content.ts';
import { windowsOf } from './season.ts';

/** A change to the dates of the season counts as a change to every task. */
export function seasonTasks({ checklists, seasons, club }: Almanac) {
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
