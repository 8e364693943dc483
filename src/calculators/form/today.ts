/* The current day in the club's time zone, and days counted from it, for the next count or look. */
import { addDays, type Day } from '../../../shared/days/day.ts';
import { formatDayWithWeekday } from '../../../shared/days/show-day.ts';
import { todayIn } from '../../../shared/days/today.ts';
import { languageHere } from '../../../shared/country/language-here.ts';

export const todayHere = (): Day => todayIn(document.documentElement.dataset.zone!, new Date());

/** "Wednesday, August 5, 2026", so many days from today. */
export const dayFromToday = (days: number): string => formatDayWithWeekday(addDays(todayHere(), days), languageHere());
