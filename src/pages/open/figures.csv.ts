/* The figures as a CSV file, for other programs. */
import type { APIRoute } from 'astro';
import { getContent } from '../../lib/content.ts';
import { figuresTable } from '../../lib/figures-table.ts';
import { edition } from '../../lib/settings.ts';

export const GET: APIRoute = async () => new Response(figuresTable(await getContent(), edition.day));
