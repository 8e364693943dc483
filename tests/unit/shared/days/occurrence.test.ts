// The next occurrence of a span that returns every year.
import assert from 'node:assert/strict';
import { nextOccurrence } from '../../../../shared/days/occurrence.ts';
import { rows, type Row } from '../../../rows.ts';
import { aDay, aMonthDay } from '../../../days.ts';

const when: Row<{ from: string; to: string; day: string }, { first: string; last: string }>[] = [
  {
    case: 'to come this year',
    given: { from: '05-20', to: '07-05', day: '2026-04-07' },
    expect: { first: '2026-05-20', last: '2026-07-05' },
    from: 'calendar',
  },
  {
    case: 'under way',
    given: { from: '05-20', to: '07-05', day: '2026-07-05' },
    expect: { first: '2026-05-20', last: '2026-07-05' },
    from: 'its last day counts',
  },
  {
    case: 'over this year',
    given: { from: '05-20', to: '07-05', day: '2026-07-06' },
    expect: { first: '2027-05-20', last: '2027-07-05' },
    from: 'calendar',
  },
  {
    case: 'over New Year, begun last year',
    given: { from: '11-15', to: '02-20', day: '2026-01-10' },
    expect: { first: '2025-11-15', last: '2026-02-20' },
    from: 'calendar',
  },
  {
    case: 'over New Year, to come',
    given: { from: '11-15', to: '02-20', day: '2026-02-21' },
    expect: { first: '2026-11-15', last: '2027-02-20' },
    from: 'calendar',
  },
  {
    case: 'to the last of February in a leap year',
    given: { from: '02-01', to: '02-28', day: '2028-02-29' },
    expect: { first: '2029-02-01', last: '2029-02-28' },
    from: 'normals have no 29 February',
  },
  {
    case: 'one day',
    given: { from: '12-31', to: '12-31', day: '2026-12-31' },
    expect: { first: '2026-12-31', last: '2026-12-31' },
    from: 'calendar',
  },
];
rows('the occurrence of an edition', when, ({ from, to, day }, expect) =>
  assert.deepEqual(nextOccurrence(aMonthDay(from), aMonthDay(to), aDay(day)), expect),
);
