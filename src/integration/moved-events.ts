/*
 * Events of a calendar file that lie on other days or hours than in the last good site while their SEQUENCE did not rise: programs
 * that hold the old event may keep it. SEQUENCE counts the dated changes of an entry, so such a move was not written down.
 */
type Event = { title: string; when: string; sequence: number };

/** A sentence for each. Events that came or went are none. */
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

/** By UID, from the lines as this almanac writes them. */
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
