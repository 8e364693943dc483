/** One end of a `when` span: a day of every year (`1 October`) or a day counted from an anchor (`2 weeks before main flow`). */
import { monthNames } from '../days/month-names.ts';
import { anchorName, anchors } from './phases.ts';
import type { Point } from './when.ts';

/** Half a year. Beyond that, another anchor is nearer. */
const farthestDays = 182;

export function readPoint(text: string): Point | null {
  const day = /^([1-9]\d?) ([A-Z][a-z]+)$/.exec(text);
  if (day) return dayOfYear(Number(day[1]), day[2]!);
  const counted = /^(?:([1-9]\d{0,2}) (day|week)(s?) (before|after) )?(.+)$/.exec(text);
  const anchor = anchors.find((each) => anchorName(each) === counted?.[5]);
  if (!counted || !anchor) return null;
  if (counted[1] === undefined) return { kind: 'anchor', anchor, offsetDays: 0 };
  const count = Number(counted[1]);
  const days = count * (counted[2] === 'week' ? 7 : 1);
  if ((count === 1) !== (counted[3] === '') || days > farthestDays) return null;
  return { kind: 'anchor', anchor, offsetDays: counted[4] === 'before' ? -days : days };
}

function dayOfYear(day: number, name: string): Point | null {
  const month = monthNames.indexOf(name as (typeof monthNames)[number]) + 1;
  return month > 0 && day <= lastDay(month) ? { kind: 'day', month, day } : null;
}

/** In a year with 365 days. */
export const lastDay = (month: number): number => [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
