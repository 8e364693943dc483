/*
 * Finds calendar events whose day or hour differs from the last good site although their SEQUENCE did not rise. Calendar programs may
 * keep the old event. SEQUENCE counts the dated changes of an entry, so such a move was not written down.
 */
type Event = { title: string; when: string; sequence: number };

/** One sentence each. New and removed events are left out. */
export function movedUnsaid(before: string, now: string): string[] {
  const held = eventsIn(before);
  return [...eventsIn(now)].flatMap(([uid, { title, when, sequence }]) => {
    const old = held.get(uid);
    if (!old || old.when === when || sequence > old.sequence) return [];
    return [
      `Calendar: "${title}" (${uid}) lies on other days than in the last site, and no dated line under history: says so; calendars of members may keep the old ones.`,
    ];
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
          sequence: Number(valueOf('SEQUENCE')),
        },
      ];
    }),
  );
}
