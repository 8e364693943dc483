/* What the pages' build hands over beside the pages: one file, read here and taken out of the site. */
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Day } from '../../shared/days/day.ts';
import type { MonthDay } from '../../shared/days/month-day.ts';

export type Club = {
  id: string;
  name: string;
  /** What the book of pages is called. */ almanac: string;
  /** Where it is, in words. */ place: string;
  language: string;
  /** The zone of the hall's clock. */ zone: string;
  demonstration: boolean;
};

export type Meeting = {
  id: string;
  title: string;
  summary: string;
  kind: string;
  place: string;
  /** As 2026-05-16. */
  day: Day;
  lastDay?: Day;
  /** The hall's clock, as 18:30. */
  start?: string;
  finish?: string;
  bring: string[];
  calledOffBy?: string;
  /** How many dated changes its history holds. */
  changes: number;
};

/** What a district's members are to do, and from when to when; days as 05-03, which come back every year. */
export type Task = {
  list: string;
  title: string;
  why: string;
  from: MonthDay;
  to: MonthDay;
  /** Where the days come from. */ basis: string | null;
  changes: number;
};
export type SeasonTasks = { district: string; name: string; tasks: Task[] };

/** A word of the word list: its names and the ways people type it, and the page that says more. */
export type Word = { id: string; names: string[]; more?: string };

/** Something new: `key` names it for good. */
export type News = { key: string; title: string; words: string; place: string; day: Day };

/** Old addresses and where they lead now, as /lists/package-day/. */
export type Moved = { from: string; to: string };

export type HandedOver = {
  club: Club;
  meetings: Meeting[];
  season: SeasonTasks[];
  words: Word[];
  news: News[];
  moved: Moved[];
  /** Every source in full, as notes begin with it. */
  publications: string[];
  /** By a page's place: its days in each district, as `valley 05-03 05-17;hill 05-12 05-26`; pages that hold at any time are left out. */
  windows: Record<string, string>;
};

export function takeHandedOver(site: string): HandedOver {
  const file = join(site, 'almanac.json');
  const handed = JSON.parse(readFileSync(file, 'utf8')) as HandedOver;
  rmSync(file);
  return handed;
}
