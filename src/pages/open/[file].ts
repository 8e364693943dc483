/* The files for other programs: JSON with its schema, and figures as a table of commas. */
import type { APIRoute } from 'astro';
import { plainParts } from '../../components/mdx/plain-parts.ts';
import { getContent, type Almanac } from '../../lib/content.ts';
import { aboutOpen, figuresTable, openBulletins, openFigures, openForage, openSigns, openTreatments } from '../../lib/open-tables.ts';
import { OPEN_FILES } from '../../lib/open-files.ts';
import { createPageContext } from '../../lib/page-context.ts';
import { edition } from '../../lib/settings.ts';
import { openSchema, type OpenKind } from '../../schemas/open.ts';
import { savedRunsSchema } from '../../schemas/runs.ts';

export const getStaticPaths = () =>
  [...OPEN_FILES.flatMap(({ name, schema }) => [name, ...(schema ? [schema] : [])]), RUNS].map((file) => ({ params: { file } }));

/** The schema of a file that only a reader's own browser writes. */
const RUNS = 'runs.schema.json';

const ENTRIES: Record<OpenKind, (almanac: Almanac) => unknown[]> = {
  bulletins: (almanac) =>
    openBulletins(almanac, ({ id, data }) =>
      plainParts(`bulletins/${id}.mdx`, data.title, createPageContext(almanac, '/', edition.day).around),
    ),
  figures: openFigures,
  signs: openSigns,
  treatments: openTreatments,
  forage: openForage,
};

export const GET: APIRoute = async ({ params }) => {
  const almanac = await getContent();
  const file = params.file!;
  if (file === 'figures.csv') return new Response(figuresTable(almanac, edition));
  if (file === RUNS) return json(savedRunsSchema());
  const kind = file.replace(/(?:\.schema)?\.json$/, '') as OpenKind;
  if (file.endsWith('.schema.json')) return json(openSchema(kind));
  return json({ $schema: `${kind}.schema.json`, about: aboutOpen(almanac, edition), [kind]: ENTRIES[kind](almanac) });
};

const json = (value: unknown): Response => new Response(`${JSON.stringify(value, null, 1)}\n`);
