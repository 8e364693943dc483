/* Reminders of a calendar event as a calendar program reads them: the local time of each alarm, and what it says. RFC 5545, 3.6.6. */
import assert from 'node:assert/strict';
import ICAL from 'ical.js';

export function remindersOf(event: ICAL.Component): { at: string; says: string }[] {
  return event.getAllSubcomponents('valarm').map((alarm) => {
    assert.equal(alarm.getFirstPropertyValue('action'), 'DISPLAY');
    const time = (event.getFirstPropertyValue('dtstart') as ICAL.Time).clone();
    // A whole day begins at midnight.
    time.isDate = false;
    time.addDuration(alarm.getFirstPropertyValue('trigger') as ICAL.Duration);
    return { at: `${time.toString().slice(0, 19)}`, says: String(alarm.getFirstPropertyValue('description')) };
  });
}
