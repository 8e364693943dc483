// An event that moved without a dated change is reported. One that moved with it, was added or was removed is not.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { clubCalendar } from '../../../src/lib/club-calendar.ts';
import type { CalendarClub, CalendarMeeting } from '../../../src/lib/club-calendar.ts';
import type { SeasonTasks } from '../../../src/lib/season-tasks.ts';
import { movedUnsaid } from '../../../src/integration/moved-events.ts';
import { seasonCalendar } from '../../../src/lib/season-calendar.ts';
import { aDay, aMonthDay } from '../../days.ts';

const club: CalendarClub = {
  id: 'quarry-town',
  name: 'Quarry Town Beekeepers',
  'time-zone': 'Europe/London',
};
const evening: CalendarMeeting = {
  id: '2026-03-24-mites',
  title: 'Mites, and how to count them; a long title that is folded over two lines of the file',
  summary: 'How.',
  kind: 'meeting',
  place: 'The hall',
  day: aDay('2026-03-24'),
  start: '18:30',
  finish: '20:00',
  bring: [],
  changes: 1,
};
const meetings = (...changed: Partial<CalendarMeeting>[]): string =>
  clubCalendar(
    club,
    changed.map((change) => ({ ...evening, ...change })),
    aDay('2026-02-01'),
    null,
  );
const valley: SeasonTasks = {
  district: 'valley',
  name: 'the valley',
  tasks: [{ list: 'swarm-season', title: 'Swarms', why: 'w', from: aMonthDay('04-21'), to: aMonthDay('06-03'), basis: null, changes: 0 }],
};
const season = (from: string, changes = 0): string =>
  seasonCalendar(club, { ...valley, tasks: [{ ...valley.tasks[0]!, from: aMonthDay(from), changes }] }, aDay('2026-04-07'), null);

const lines = (title: string, uid: string): string[] => [
  `Calendar: "${title}" (${uid}) lies on other days than in the last site, and no dated line under history: says so; calendars of members may keep the old ones.`,
];

test('the same events give nothing', () => assert.deepEqual(movedUnsaid(meetings({}), meetings({})), []));
test('an hour later, no change written', () =>
  assert.deepEqual(
    movedUnsaid(meetings({}), meetings({ start: '19:30', finish: '21:00' })),
    lines(evening.title, '2026-03-24-mites@quarry-town'),
  ));
test('an hour later, with a dated change', () =>
  assert.deepEqual(movedUnsaid(meetings({}), meetings({ start: '19:30', finish: '21:00', changes: 2 })), []));
test('a meeting that takes place after all, with a dated change and without', () => {
  const off = meetings({ calledOff: 'No power.' });
  assert.deepEqual(movedUnsaid(meetings({}), off), [], 'to call it off is said by its status');
  assert.deepEqual(movedUnsaid(off, meetings({ changes: 2 })), []);
  assert.deepEqual(movedUnsaid(off, meetings({})), [
    `Calendar: "${evening.title}" (2026-03-24-mites@quarry-town) was called off in the last site and is not any more, and no dated line under history: says so; calendars of members may keep the old ones.`,
  ]);
});
test('only words changed', () => assert.deepEqual(movedUnsaid(meetings({}), meetings({ summary: 'Anew.', place: 'The barn' })), []));
test('an event that came, and one that went', () =>
  assert.deepEqual(movedUnsaid(meetings({}), meetings({ id: 'other', day: aDay('2026-05-05') })), []));
test('a task whose days moved with the season', () => {
  assert.deepEqual(movedUnsaid(season('04-21'), season('04-24')), lines('Swarms', 'swarm-season.valley.2026@quarry-town'));
  assert.deepEqual(movedUnsaid(season('04-21'), season('04-24', 1)), []);
});
test('no site before: nothing', () => assert.deepEqual(movedUnsaid('', meetings({})), []));
