/* The web app manifest. */
import type { APIRoute } from 'astro';
import { getContent } from '../lib/content.ts';
import { manifest } from '../lib/manifest.ts';
import { emptyRooms } from '../lib/rooms.ts';

export const GET: APIRoute = async () => {
  const almanac = await getContent();
  return new Response(manifest(almanac.club, import.meta.env.BASE_URL, emptyRooms(almanac)));
};
