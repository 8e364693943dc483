// Season calendars, parsed by two parsers other than their writer's: one from the registry, one of thirty lines below.
import assert from 'node:assert/strict';
import { onTestFinished, test } from 'vitest';
import ICAL from 'ical.js';
import type { CalendarClub } from '../../../src/lib/club-calendar.ts';
import type { SeasonTasks, Task } from '../../../src/lib/season-tasks.ts';
import { seasonCalendar } from '../../../src/lib/season-calendar.ts';
import { aDay, aMonthDay } from '../../days.ts';
import { remindersOf } from '../../reminders.ts';

const club: CalendarClub = {
  id: 'quarry-town',
  name: 'Quarry Town Beekeepers',
  'time-zone': 'Europe/London',
};
const swarms: Task = {
  list: 'swarm-season',
  title: 'The weekly look in swarm season',
  why: 'a cell is sealed, and the swarm gone, within days',
  from: aMonthDay('04-21'),
  to: aMonthDay('06-03'),
  basis: 'from 6 years of members’ dates, about 9 days either way',
  changes: 0,
};
const winter: Task = {
  list: 'winter-rest',
  title: 'Winter: mānuka, straps, and a comma; a colon: and a back\\slash',
  why: 'wind lifts roofs',
  from: aMonthDay('11-15'),
  to: aMonthDay('02-20'),
  basis: null,
  changes: 2,
};
const valley: SeasonTasks = { district: 'valley', name: 'the valley', tasks: [swarms, winter] };

type Event = { uid: string; start: string; end: string; sequence: string; summary: string; description: string };

/** Unfolds lines by bytes, splits name, parameters and value, and undoes escapes. Shares no code with the writer or the other parser. */
function plainly(text: string): Event[] {
  const lines = text
    .replace(/\r\n[ \t]/g, '')
    .replace(/BEGIN:VALARM\r\n[^]*?END:VALARM\r\n/g, '')
    .split('\r\n');
  const events: Record<string, string>[] = [];
  for (const line of lines) {
    if (line === 'BEGIN:VEVENT') events.push({});
    const [, name, parameters, value] = /^([A-Z-]+)((?:;[^:]*)?):(.*)$/.exec(line) ?? [];
    if (name && events.length > 0) events.at(-1)![name + parameters!] = value!;
  }
  const unescaped = (value = '') => value.replace(/\\([\\;,nN])/g, (_, sign: string) => (sign.toLowerCase() === 'n' ? '\n' : sign));
  const day = (value = '') => value.replace(/^(\d{4})(\d\d)(\d\d)$/, '$1-$2-$3');
  return events.map((event) => ({
    uid: event.UID!,
    start: day(event['DTSTART;VALUE=DATE']),
    end: day(event['DTEND;VALUE=DATE']),
    sequence: event.SEQUENCE!,
    summary: unescaped(event.SUMMARY),
    description: unescaped(event.DESCRIPTION),
  }));
}

function byLibrary(text: string): Event[] {
  return new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((component) => {
    const event = new ICAL.Event(component);
    assert.ok(event.startDate.isDate && event.endDate.isDate);
    return {
      uid: event.uid,
      start: event.startDate.toString(),
      end: event.endDate.toString(),
      sequence: String(component.getFirstPropertyValue('sequence')),
      summary: event.summary,
      description: event.description,
    };
  });
}

test('both parsers read the same events: all-day events that end after the last day, text as written', () => {
  const text = seasonCalendar(club, valley, aDay('2026-04-07'), null);
  const expected: Event[] = [
    {
      uid: 'swarm-season.valley.2026@quarry-town',
      start: '2026-04-21',
      end: '2026-06-04',
      sequence: '0',
      summary: swarms.title,
      description:
        'A cell is sealed, and the swarm gone, within days.\nThe days in the valley: from 6 years of members’ dates, about 9 days either way.',
    },
    {
      uid: 'winter-rest.valley.2026@quarry-town',
      start: '2026-11-15',
      end: '2027-02-21',
      sequence: '2',
      summary: winter.title,
      description: 'Wind lifts roofs.',
    },
  ];
  assert.deepEqual(plainly(text), expected);
  assert.deepEqual(byLibrary(text), expected);
  const [event] = byLibrary(seasonCalendar(club, valley, aDay('2026-04-07'), 'https://club.example/bees/'));
  assert.match(event!.description, /\nhttps:\/\/club\.example\/bees\/lists\/swarm-season\/$/);
});

test('each task reminds once, at six on the evening before its first day', () => {
  const calendar = new ICAL.Component(ICAL.parse(seasonCalendar(club, valley, aDay('2026-04-07'), null)));
  const seen = calendar.getAllSubcomponents('vevent').map((event) => remindersOf(event));
  assert.deepEqual(seen, [[{ at: '2026-04-20T18:00:00', says: swarms.title }], [{ at: '2026-11-14T18:00:00', says: winter.title }]]);
});

test('the same edition gives the same bytes on any clock; a changed window keeps its UID and another year has its own', () => {
  const own = process.env.TZ;
  onTestFinished(() => void (own === undefined ? delete process.env.TZ : (process.env.TZ = own)));
  const made = ['UTC', 'Asia/Tokyo', 'America/New_York', 'Pacific/Auckland'].map((zone) => {
    process.env.TZ = zone;
    return seasonCalendar(club, valley, aDay('2026-04-07'), null);
  });
  for (const other of made) assert.equal(other, made[0]);
  const moved = plainly(
    seasonCalendar(club, { ...valley, tasks: [{ ...swarms, from: aMonthDay('04-25'), changes: 1 }] }, aDay('2026-04-20'), null),
  )[0]!;
  assert.deepEqual([moved.uid, moved.start, moved.sequence], ['swarm-season.valley.2026@quarry-town', '2026-04-25', '1']);
  assert.equal(
    plainly(seasonCalendar(club, { ...valley, tasks: [swarms] }, aDay('2026-08-01'), null))[0]!.uid,
    'swarm-season.valley.2027@quarry-town',
  );
  const hill = plainly(seasonCalendar(club, { ...valley, district: 'hill' }, aDay('2026-04-07'), null));
  assert.ok(hill.every(({ uid }) => uid.includes('.hill.')));
});

test('lines are folded at 75 bytes, between characters, and nobody is marked as busy', () => {
  const text = seasonCalendar(
    club,
    { ...valley, tasks: [{ ...winter, title: 'ā'.repeat(120) }] },
    aDay('2026-04-07'),
    'https://club.example/bees/',
  );
  for (const line of text.split('\r\n')) assert.ok(Buffer.byteLength(line) <= 75, line);
  assert.equal(plainly(text)[0]!.summary, 'ā'.repeat(120));
  assert.match(text, /\r\nTRANSP:TRANSPARENT\r\n/);
  assert.match(text, /\r\nURL;VALUE=URI:https:\/\/club\.example\/bees\/lists\/winter-rest\/\r\n/);
  assert.match(text, /\r\nDTSTAMP:20260407T000000Z?\r\n/);
  assert.ok(text.endsWith('END:VCALENDAR\r\n') && !/[^\r]\n/.test(text));
});
