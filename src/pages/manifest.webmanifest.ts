/* The web app manifest. */
import type { APIRoute } from 'astro';
import { getContent } from '../lib/content.ts';
import { manifest } from '../lib/manifest.ts';

export const GET: APIRoute = async () => new Response(manifest((await getContent()).club, import.meta.env.BASE_URL));
