/* The files for other programs: JSON with its schema, and figures as a table of commas. */
import type { APIRoute } from 'astro';
import { openAlmanac, type Almanac } from '../../library/almanac.ts';
import { aboutOpen, figuresTable, openBulletins, openFigures, openForage, openSigns, openTreatments } from '../../library/open-tables.ts';
import { OPEN_FILES } from '../../library/open-files.ts';
import { sheet } from '../../library/page.ts';
import { picturesBeside } from '../../library/pictures.ts';
import { edition } from '../../library/settings.ts';
import { openSchema, type OpenKind } from '../../schemas/open.ts';
import { savedRunsSchema } from '../../schemas/runs.ts';
import { drawProse } from '../../vocabulary/prose.ts';

export const getStaticPaths = () =>
  [...OPEN_FILES.flatMap(({ name, schema }) => [name, ...(schema ? [schema] : [])]), RUNS].map((file) => ({ params: { file } }));

/** The schema of a file that only a reader's own browser writes. */
const RUNS = 'runs.schema.json';

const ENTRIES: Record<OpenKind, (almanac: Almanac) => unknown[]> = {
  bulletins: (almanac) => openBulletins(almanac, ({ body, data }) => partsOf(almanac, body, data.title)),
  figures: openFigures,
  signs: openSigns,
  treatments: openTreatments,
  forage: openForage,
};

export const GET: APIRoute = async ({ params }) => {
  const almanac = await openAlmanac();
  const file = params.file!;
  if (file === 'figures.csv') return new Response(figuresTable(almanac, edition));
  if (file === RUNS) return json(savedRunsSchema());
  const kind = file.replace(/(?:\.schema)?\.json$/, '') as OpenKind;
  if (file.endsWith('.schema.json')) return json(openSchema(kind));
  return json({ $schema: `${kind}.schema.json`, about: aboutOpen(almanac, edition), [kind]: ENTRIES[kind](almanac) });
};

const json = (value: unknown): Response => new Response(`${JSON.stringify(value, null, 1)}\n`);

/** The words under each heading, those before the first under the title. Whom to ask is named by duty, without a number. */
function partsOf(almanac: Almanac, body: string, title: string): { heading: string; words: string }[] {
  const around = { ...sheet(almanac, '/', edition.day).around, ...picturesBeside(almanac, 'bulletins') };
  const { opening, rest } = drawProse(body, { ...around, contact: (duty) => ({ name: around.contact(duty)?.name ?? duty }) });
  const parts = rest.split(/(?=<section class="part-of-page">)/).map((part) => ({
    heading: wordsOf(/<h2[^>]*>([\s\S]*?)<\/h2>/.exec(part)?.[1] ?? ''),
    words: wordsOf(part.replace(/<h2[\s\S]*?<\/h2>/, '')),
  }));
  return [{ heading: title, words: wordsOf(opening) }, ...parts].filter(({ words }) => words !== '');
}

const ENTITIES: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"' };

const wordsOf = (html: string): string =>
  html
    .replace(/<sup class="mark">[\s\S]*?<\/sup>/g, '')
    .replace(/<li>/g, '\n- ')
    .replace(/<img [^>]*\balt="([^"]*)"[^>]*>/g, '\n$1\n')
    .replace(/<\/(?:p|tr|h3|figcaption)>/g, '\n')
    .replace(/<[^>]*>/g, '')
    .replace(/&(?:#x([0-9a-f]+)|(amp|lt|gt|quot));/gi, (_, hex?: string, name?: string) =>
      name ? ENTITIES[name]! : String.fromCodePoint(Number.parseInt(hex!, 16)),
    )
    .replace(/[ \t\u00a0]+/g, ' ')
    .replace(/ *\n\s*/g, '\n')
    .trim();
