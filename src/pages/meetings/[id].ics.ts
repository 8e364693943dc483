/* One meeting as a calendar file. Its event is the same one as in club.ics. */
import type { APIRoute, InferGetStaticPropsType } from 'astro';
import { calendarMeetings, meetingCalendar } from '../../lib/club-calendar.ts';
import { getContent } from '../../lib/content.ts';
import { edition, rootAddress } from '../../lib/settings.ts';

export const getStaticPaths = async () =>
  calendarMeetings((await getContent()).meetings).map((meeting) => ({ params: { id: meeting.id }, props: { meeting } }));

export const GET: APIRoute<InferGetStaticPropsType<typeof getStaticPaths>> = async ({ props: { meeting }, site }) => {
  const { club } = await getContent();
  return new Response(meetingCalendar(club, meeting, edition.day, rootAddress(site, import.meta.env.BASE_URL)));
};
