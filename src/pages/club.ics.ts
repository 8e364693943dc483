/* The club's meetings as a calendar to subscribe to. */
import type { APIRoute } from 'astro';
import { calendarMeetings, clubCalendar } from '../lib/club-calendar.ts';
import { getContent } from '../lib/content.ts';
import { edition, rootAddress } from '../lib/settings.ts';

export const GET: APIRoute = async ({ site }) => {
  const { club, meetings } = await getContent();
  return new Response(clubCalendar(club, calendarMeetings(meetings), edition.day, rootAddress(site, import.meta.env.BASE_URL)));
};
