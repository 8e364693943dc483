/* changes.xml, the Atom feed. It needs the site's whole address, and is not there without one. */
import type { APIRoute } from 'astro';
import { getContent } from '../lib/content.ts';
import { changesFeed } from '../lib/feed.ts';
import { newsOf } from '../lib/news.ts';
import { edition, rootAddress } from '../lib/settings.ts';

export const getStaticPaths = () => (import.meta.env.SITE ? [{ params: { feed: 'changes' } }] : []);

export const GET: APIRoute = async ({ site }) => {
  const almanac = await getContent();
  return new Response(changesFeed(almanac.club, newsOf(almanac), edition.day, rootAddress(site, import.meta.env.BASE_URL)!));
};
