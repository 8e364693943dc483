/* Checks meetings: date, weekday and hours agree, one that was called off taught nothing, and the district is one of the club's. */
import { weekday } from '../../shared/days/day.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import type { Meeting } from '../schemas/meetings.ts';
import type { ValidEntries, ValidEntry } from './fields.ts';
import { nearOrAll } from '../../shared/words/near-name.ts';
import { atField, type Message } from './place.ts';

export function meetingFaults(club: ValidEntries): Diagnostic[] {
  const districts = club.club?.data.districts.map(({ id }) => id);
  return club.of.meetings.flatMap((entry) => [
    ...dayFaults(entry),
    ...hourFaults(entry),
    ...calledOffFaults(entry),
    ...(districts ? districtFaults(entry, districts) : []),
  ]);
}

const at = (entry: ValidEntry, field: keyof Meeting, message: Omit<Message, 'rule' | 'field'>): Diagnostic =>
  atField(entry, [field], { rule: 'meeting', field, ...message });

function dayFaults(entry: ValidEntry<Meeting>): Diagnostic[] {
  const { day, weekday: typed, 'last-day': last } = entry.data;
  const faults: Diagnostic[] = [];
  const truth = weekday(day);
  if (typed && typed !== truth)
    faults.push(at(entry, 'weekday', { found: `${typed}, but ${day} is a ${truth}`, write: `${truth}, or the day that is meant` }));
  if (last !== undefined && last <= day)
    faults.push(at(entry, 'last-day', { found: `${last}, which is not after day, ${day}`, write: 'a later day, or leave the line out' }));
  return faults;
}

function hourFaults(entry: ValidEntry<Meeting>): Diagnostic[] {
  const { start, finish, 'last-day': last } = entry.data;
  if (start !== undefined && finish === undefined)
    return [
      at(entry, 'start', { found: `${start} without a finish`, write: 'a line "finish:" as well, or leave both out for a whole day' }),
    ];
  if (finish !== undefined && start === undefined)
    return [
      at(entry, 'finish', { found: `${finish} without a start`, write: 'a line "start:" as well, or leave both out for a whole day' }),
    ];
  if (start !== undefined && finish !== undefined && last === undefined && finish <= start) {
    return [
      at(entry, 'finish', { found: `${finish}, which is not after start, ${start}`, write: 'a later time of 24 hours, such as 20:30' }),
    ];
  }
  return [];
}

/** It is called off before it is over, and teaches nothing. */
function calledOffFaults(entry: ValidEntry<Meeting>): Diagnostic[] {
  const { day, 'last-day': last, 'called-off': off, taught } = entry.data;
  if (off === undefined) return [];
  const said = off.slice(0, 10);
  const end = last ?? day;
  return [
    ...(said > end
      ? [at(entry, 'called-off', { found: `${said}, after the meeting, ${end}`, write: `the day it was said, up to ${end}` })]
      : []),
    ...(taught ? [at(entry, 'taught', { found: 'what was taught, at a meeting that was called off', write: 'one of the two lines' })] : []),
  ];
}

function districtFaults(entry: ValidEntry<Meeting>, districts: string[]): Diagnostic[] {
  const { district } = entry.data;
  if (district === undefined || districts.includes(district)) return [];
  return [
    at(entry, 'district', {
      found: `"${district}", which is not among the districts of club.yaml`,
      write: nearOrAll(district, districts),
    }),
  ];
}
