// Calendar file, parsed by a parser other than its writer's: local time, all-day events, identity, long lines.
import assert from 'node:assert/strict';
import { afterAll, onTestFinished, test } from 'vitest';
import ICAL from 'ical.js';
import type { Day } from '../../../shared/days/day.ts';
import { calendarMeetings, clubCalendar, meetingCalendar } from '../../../src/lib/club-calendar.ts';
import type { CalendarClub, CalendarMeeting } from '../../../src/lib/club-calendar.ts';
import { rows, type Row } from '../../rows.ts';
import { aDay } from '../../days.ts';
import { remindersOf } from '../../reminders.ts';

const club: CalendarClub = {
  id: 'quarry-town',
  name: 'Quarry Town Beekeepers',
  'time-zone': 'Europe/London',
};
const evening: CalendarMeeting = {
  id: '2026-03-24-mites',
  title: 'Mites',
  summary: 'How to count.',
  kind: 'meeting',
  place: 'The hall',
  day: aDay('2026-03-24'),
  start: '18:30',
  finish: '20:00',
  bring: [],
  changes: 0,
};
const edition = aDay('2026-02-01');

function read(text: string): ICAL.Event[] {
  const calendar = new ICAL.Component(ICAL.parse(text));
  for (const zone of calendar.getAllSubcomponents('vtimezone')) ICAL.TimezoneService.register(zone);
  return calendar.getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));
}

const only = (meeting: Partial<CalendarMeeting>, of: Partial<CalendarClub> = {}): ICAL.Event => {
  const events = read(clubCalendar({ ...club, ...of }, [{ ...evening, ...meeting }], edition, null));
  assert.equal(events.length, 1);
  return events[0]!;
};

const instant = (time: ICAL.Time): string => time.toJSDate().toISOString();

const halls: Row<{ zone: string; day: Day; start: string }, string>[] = [
  {
    case: 'London before the clocks change',
    given: { zone: 'Europe/London', day: aDay('2026-03-24'), start: '18:30' },
    expect: '2026-03-24T18:30:00.000Z',
    from: 'GMT',
  },
  {
    case: 'London after the clocks change',
    given: { zone: 'Europe/London', day: aDay('2026-03-31'), start: '18:30' },
    expect: '2026-03-31T17:30:00.000Z',
    from: 'BST from 29 March 2026',
  },
  {
    case: 'New York in winter',
    given: { zone: 'America/New_York', day: aDay('2026-03-05'), start: '19:00' },
    expect: '2026-03-06T00:00:00.000Z',
    from: 'EST',
  },
  {
    case: 'New York in summer',
    given: { zone: 'America/New_York', day: aDay('2026-07-18'), start: '09:00' },
    expect: '2026-07-18T13:00:00.000Z',
    from: 'EDT',
  },
  {
    case: 'an old name of a zone',
    given: { zone: 'US/Eastern', day: aDay('2026-07-18'), start: '09:00' },
    expect: '2026-07-18T13:00:00.000Z',
    from: 'EDT',
  },
  {
    case: 'Sydney in summer',
    given: { zone: 'Australia/Sydney', day: aDay('2026-01-10'), start: '10:00' },
    expect: '2026-01-09T23:00:00.000Z',
    from: 'AEDT',
  },
  {
    case: 'Sydney in winter',
    given: { zone: 'Australia/Sydney', day: aDay('2026-07-10'), start: '10:00' },
    expect: '2026-07-10T00:00:00.000Z',
    from: 'AEST',
  },
  {
    case: 'Perth, which has no summer time',
    given: { zone: 'Australia/Perth', day: aDay('2026-01-10'), start: '10:00' },
    expect: '2026-01-10T02:00:00.000Z',
    from: 'AWST',
  },
  {
    case: 'Dublin in summer',
    given: { zone: 'Europe/Dublin', day: aDay('2026-07-10'), start: '10:00' },
    expect: '2026-07-10T09:00:00.000Z',
    from: 'IST',
  },
];
rows('the hall', halls, ({ zone, day, start }, expect) =>
  assert.equal(instant(only({ day, start }, { 'time-zone': zone }).startDate), expect),
);

const spans: Row<Partial<CalendarMeeting>, { first: string; end: string; dates: boolean }>[] = [
  {
    case: 'one whole day',
    given: { day: aDay('2026-06-13'), start: undefined, finish: undefined },
    expect: { first: '2026-06-13', end: '2026-06-14', dates: true },
    from: 'RFC 5545, 3.6.1',
  },
  {
    case: 'two whole days',
    given: { day: aDay('2026-06-13'), 'last-day': aDay('2026-06-14'), start: undefined, finish: undefined },
    expect: { first: '2026-06-13', end: '2026-06-15', dates: true },
    from: 'RFC 5545, 3.6.1',
  },
  {
    case: 'over the end of a year',
    given: { day: aDay('2026-12-31'), start: undefined, finish: undefined },
    expect: { first: '2026-12-31', end: '2027-01-01', dates: true },
    from: 'RFC 5545, 3.6.1',
  },
  {
    case: 'two days with hours',
    given: { day: aDay('2026-06-13'), 'last-day': aDay('2026-06-14'), start: '09:00', finish: '16:00' },
    expect: { first: '2026-06-13T09:00:00', end: '2026-06-14T16:00:00', dates: false },
    from: 'the hall',
  },
  {
    case: 'two days without a last hour',
    given: { day: aDay('2026-06-13'), 'last-day': aDay('2026-06-14'), start: '09:00', finish: undefined },
    expect: { first: '2026-06-13', end: '2026-06-15', dates: true },
    from: 'the hall',
  },
];
rows('from when to when', spans, (given, expect) => {
  const { startDate, endDate } = only(given);
  assert.deepEqual({ first: startDate.toString(), end: endDate.toString(), dates: startDate.isDate }, expect);
});

test('without an end time none is invented', () => {
  const event = only({ finish: undefined });
  assert.equal(event.component.getFirstProperty('dtend'), null);
  assert.equal(event.startDate.toString(), '2026-03-24T18:30:00');
});

test('the file is the same in any time zone, also in hours that a clock change skips', () => {
  const own = process.env.TZ;
  onTestFinished(() => void (own === undefined ? delete process.env.TZ : (process.env.TZ = own)));
  // New York has no 02:30 on this day.
  const night = { ...evening, id: 'night', day: aDay('2026-03-08'), start: '02:30', finish: '03:30' };
  const made = ['UTC', 'Asia/Tokyo', 'America/New_York', 'Australia/Sydney', 'Asia/Beirut'].map((zone) => {
    process.env.TZ = zone;
    return clubCalendar(club, [evening, night, { ...evening, id: 'day', start: undefined, finish: undefined }], edition, null);
  });
  for (const other of made) assert.equal(other, made[0]);
  assert.match(made[0]!, /DTSTART;TZID=Europe\/London:20260308T023000\r\n/);
});

const evenings: Row<Partial<CalendarMeeting>, string>[] = [
  { case: 'an evening', given: {}, expect: '2026-03-23T18:00:00', from: 'half past six, less a day and half an hour' },
  { case: 'a morning', given: { start: '09:15' }, expect: '2026-03-23T18:00:00', from: 'a quarter past nine, less 15 h 15 min' },
  {
    case: 'a whole day',
    given: { day: aDay('2026-06-13'), start: undefined, finish: undefined },
    expect: '2026-06-12T18:00:00',
    from: 'midnight, less 6 h',
  },
  {
    case: 'several days without a last hour',
    given: { day: aDay('2026-06-13'), 'last-day': aDay('2026-06-14'), start: '09:00', finish: undefined },
    expect: '2026-06-12T18:00:00',
    from: 'midnight, less 6 h',
  },
];
rows('one reminder, at six on the evening before', evenings, (given, expect) =>
  assert.deepEqual(remindersOf(only(given).component), [{ at: expect, says: evening.title }]),
);

test('the UID stays when a meeting moves, and each dated change counts', () => {
  const first = only({});
  const moved = only({ start: '19:30', finish: '21:00', day: aDay('2026-03-25'), changes: 2 });
  assert.equal(first.uid, '2026-03-24-mites@quarry-town');
  assert.equal(moved.uid, first.uid);
  assert.deepEqual([first.sequence, moved.sequence], [0, 4]);
});

test('a meeting that is called off is cancelled in both files, under the same UID and one higher SEQUENCE, and rings nowhere', () => {
  const off = { ...evening, calledOff: 'No power.', calledOffBy: '08:00', changes: 1 };
  const both = [clubCalendar(club, [off], edition, null), meetingCalendar(club, off, edition, null)].map((text) => read(text)[0]!);
  for (const event of both) {
    // RFC 5545, 3.8.1.11; RFC 5546, 2.1.4: the same UID with a higher SEQUENCE replaces what a calendar holds.
    assert.equal(event.component.getFirstPropertyValue('status'), 'CANCELLED');
    assert.deepEqual([event.uid, event.sequence], [only({}).uid, 3]);
    assert.equal(event.summary, 'Called off: Mites');
    assert.equal(event.description, 'Called off: No power.\nHow to count.');
    assert.deepEqual(remindersOf(event.component), []);
  }
  assert.equal(only({}).component.getFirstProperty('status'), null);
  // It takes place after all, which a dated line says: SEQUENCE rises once more.
  assert.equal(only({ changes: 2 }).sequence, 4);
});

test('the file of one meeting has the event of club.ics with the same identity and place, and no alarm', () => {
  const placed = { ...evening, address: '00 Invented Road', changes: 3 };
  const [one, ...more] = read(meetingCalendar(club, placed, edition, 'https://club.example/'));
  const [all] = read(clubCalendar(club, [placed], edition, 'https://club.example/'));
  assert.deepEqual(more, []);
  assert.equal(one!.location, 'The hall, 00 Invented Road');
  assert.deepEqual(remindersOf(one!.component), []);
  const held = (event: ICAL.Event): unknown => event.component.getAllProperties().map((property) => property.toICALString());
  assert.deepEqual(held(one!), held(all!));
  assert.equal(remindersOf(all!.component).length, 1);
});

test('the calendar takes the reason of a meeting that is called off from its entry', () => {
  const data = { ...evening, 'called-off': '2026-03-20, no power in the hall' } as unknown as Parameters<
    typeof calendarMeetings
  >[0][number]['data'];
  assert.equal(calendarMeetings([{ id: 'mites', data, body: '' }])[0]!.calledOff, 'No power in the hall.');
});

test('the stamp is the day of the edition, in UTC', () =>
  assert.equal(only({}).component.getFirstPropertyValue('dtstamp')?.toString(), '2026-02-01T00:00:00Z'));

test('words come back as they were written', () => {
  const words = {
    title: 'Bees, wasps; and "hornets" \\ frelons é ü 蜂 🐝',
    summary: 'One, two; three.',
    calledOffBy: '08:00; ring',
    bring: ['a veil', 'shoes, closed'],
  };
  const event = only(words);
  assert.equal(event.summary, words.title);
  assert.equal(event.location, 'The hall');
  assert.equal(event.description, 'One, two; three.\nCalled off by 08:00; ring.\nBring: a veil; shoes, closed.');
});

test('no line is longer than 75 octets or cut inside a character, and all line ends are equal', () => {
  const text = clubCalendar(club, [{ ...evening, title: 'é'.repeat(90), summary: '蜂🐝'.repeat(60) }], edition, null);
  assert.ok(text.endsWith('END:VCALENDAR\r\n') && !/[^\r]\n|\n\r|\r(?!\n)/.test(text));
  const lines = text.split('\r\n');
  const folded = lines.filter((line) => line.startsWith(' '));
  assert.ok(folded.length > 5, `${folded.length} lines are folded`);
  for (const line of lines) {
    assert.ok(Buffer.byteLength(line) <= 75, `${Buffer.byteLength(line)} octets: ${line}`);
    assert.ok(!/^ ?[\udc00-\udfff]|[\ud800-\udbff]$/.test(line), `cut inside a letter: ${line}`);
  }
  assert.equal(read(text)[0]!.summary, 'é'.repeat(90));
});

test('an event has an address only where the site has one', () => {
  assert.equal(only({}).component.getFirstProperty('url'), null);
  const [event] = read(clubCalendar(club, [evening], edition, 'https://club.example/bees/'));
  assert.equal(event!.component.getFirstPropertyValue('url'), 'https://club.example/bees/meetings/2026-03-24-mites/');
  assert.equal(event!.description, 'How to count.\nhttps://club.example/bees/meetings/2026-03-24-mites/');
});

test('without meetings the calendar has no events', () => assert.deepEqual(read(clubCalendar(club, [], edition, null)), []));

afterAll(() => ICAL.TimezoneService.reset());
