/* Middleware: an empty room is not drawn. An answer without a body writes no file. */
import { defineMiddleware } from 'astro:middleware';
import { getContent } from './lib/content.ts';
import { emptyRooms } from './lib/rooms.ts';

export const onRequest = defineMiddleware(async ({ url }, next) => {
  const place = url.pathname.slice(import.meta.env.BASE_URL.length);
  return emptyRooms(await getContent()).has(place) ? new Response(null, { status: 404 }) : next();
});
