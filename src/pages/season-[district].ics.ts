/* What to do in one district, as a calendar to subscribe to. */
import type { APIRoute } from 'astro';
import { getContent } from '../lib/content.ts';
import { seasonCalendar } from '../lib/season-calendar.ts';
import { seasonTasks, type SeasonTasks } from '../lib/season-tasks.ts';
import { edition, rootAddress } from '../lib/settings.ts';

export const getStaticPaths = async () =>
  seasonTasks(await getContent()).map((tasks) => ({ params: { district: tasks.district }, props: { tasks } }));

export const GET: APIRoute<{ tasks: SeasonTasks }> = async ({ props: { tasks }, site }) => {
  const { club } = await getContent();
  return new Response(seasonCalendar(club, tasks, edition.day, rootAddress(site, import.meta.env.BASE_URL)));
};
