/* Which pages search engines may index. */
import type { APIRoute } from 'astro';
import { getContent } from '../lib/content.ts';
import { rootAddress } from '../lib/settings.ts';
import { robots } from '../lib/robots.ts';

export const GET: APIRoute = async ({ site }) =>
  new Response(robots(rootAddress(site, import.meta.env.BASE_URL), (await getContent()).club.demonstration));
