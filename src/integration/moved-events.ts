/*
 * Finds calendar events whose day or hour differs from the last good site although their SEQUENCE did not rise, and meetings that were
 * called off there and are not any more. Calendar programs may keep the old event. SEQUENCE rises with the dated changes of an entry, so
 * such a change was not written down.
 */
type Event = { title: string; when: string; status: string; sequence: number };

/** One sentence each. New and removed events are left out. */
export function movedUnsaid(before: string, now: string): string[] {
  const held = eventsIn(before);
  return [...eventsIn(now)].flatMap(([uid, { title, when, status, sequence }]) => {
    const old = held.get(uid);
    if (!old || sequence > old.sequence) return [];
    const unsaid = (what: string): string =>
      `Calendar: "${title}" (${uid}) ${what}, and no dated line under history: says so; calendars of members may keep the old ones.`;
    if (old.when !== when) return [unsaid('lies on other days than in the last site')];
    return old.status === status ? [] : [unsaid('was called off in the last site and is not any more')];
  });
}

/** By UID, from the lines that this almanac writes. */
function eventsIn(calendar: string): Map<string, Event> {
  const blocks = calendar
    .replace(/\r?\n[ \t]/g, '')
    .split('BEGIN:VEVENT')
    .slice(1);
  return new Map(
    blocks.map((block) => {
      const valueOf = (name: string): string => new RegExp(`^${name}(?:;[^:\\r\\n]*)?:(.*?)\\r?$`, 'm').exec(block)?.[1] ?? '';
      return [
        valueOf('UID'),
        {
          title: valueOf('SUMMARY').replace(/\\(.)/g, '$1'),
          when: `${valueOf('DTSTART')} ${valueOf('DTEND')}`,
          status: valueOf('STATUS'),
          sequence: Number(valueOf('SEQUENCE')),
        },
      ];
    }),
  );
}
