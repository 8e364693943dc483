import { landWords } from '../../schemas/where.ts';

export const title = 'Figures';
export const lead = 'Every number that somebody may revise, once: what this club takes, and where all sources stand side by side.';
export const count = (figures: number): string => `${figures} ${figures === 1 ? 'figure' : 'figures'}`;
export const asTable = 'All figures as a table to download';
/** The page of one subject. */
export const subjectTitle = (subject: string): string => `Figures: ${subject}`;
export const subjectLead = 'Who says it, for which place, measured how, since when, and how surely. Where sources differ, all are shown.';
/** `land` is a code, such as US. */
export const noRowFor = (land?: string): string => `no row for ${landWords(land)}`;
export const noRowSentence = (land?: string): string => `No row for ${landWords(land)}.`;
export const noneToday = 'no row holds today';
export const followedHere = 'followed here';
export const inForce = (days: string, sureness: string): string => `In force ${days}; ${sureness}.`;
export const elsewhere = (rows: number): string => `Elsewhere: ${rows === 1 ? 'one row' : `${rows} rows`}`;
export const rows = (count: number): string => `${count} rows.`;
export const whyThisOne = '**Why this one:** {because}';
/** `{next}` is drawn by the page: the day of the next check. */
export const checked = (day: string, by: string): string => `Checked ${day} by the ${by}; next check {next}.`;
export const all = 'All figures';
