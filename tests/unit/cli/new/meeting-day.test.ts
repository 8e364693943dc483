/* The day before a meeting's title becomes its field `day`, whatever its form, unless it could be two days. */
import assert from 'node:assert/strict';
import { rows } from '../../../rows.ts';
import { draftOf } from '../../../../src/cli/new/draft.ts';

const REFUSED = '"6/7/2026" could be two days, or none. Write the day as in: npm run new -- meeting "2026-05-16 Honey evening".';

rows(
  'a new meeting',
  [
    { case: 'of the standard', given: '2026-12-12 Honey evening', expect: 'meetings/2026-12-12-honey-evening.mdx', from: 'ISO 8601' },
    { case: 'two equal numbers', given: '12/12/2026 Honey evening', expect: 'meetings/2026-12-12-honey-evening.mdx', from: 'the calendar' },
    { case: 'a number over 12', given: '28.11.2026, Honey evening', expect: 'meetings/2026-11-28-honey-evening.mdx', from: 'the calendar' },
    { case: 'two possible days', given: '6/7/2026 Honey evening', expect: REFUSED, from: 'the calendar' },
  ],
  (given, expect) => {
    const drafted = draftOf('meetings', given);
    if (!drafted.ok) return assert.equal(drafted.reason, expect);
    assert.equal(drafted.value[0].path, expect);
    assert.match(drafted.value[0].text, /^title: "?Honey evening"?$/m);
    return assert.match(drafted.value[0].text, /^day: 2026-\d\d-\d\d$/m);
  },
);
