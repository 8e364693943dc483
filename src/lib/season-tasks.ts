/* What is to be done in each district and from when to when, as the calendars of the season are handed it. */
import type { Almanac } from './content.ts';
import { windowsOf } from './season.ts';

/** A change to the season's own dates counts as one to every task. */
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
