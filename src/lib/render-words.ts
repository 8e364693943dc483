/*
 * Renders the words of an entry as an Astro component, and returns their headings and figures. Notes get their numbers here, in reading
 * order.
 */
import { getEntry, render } from 'astro:content';
import type { AstroComponentFactory } from 'astro/runtime/server/index.js';
import type { Almanac, Item } from './content.ts';
import { createPageContext, type PageContext } from './page-context.ts';
import { picturesBeside } from './pictures.ts';
import { isPublished } from './published.ts';
import type { FigureShown, Part, RenderContext, WordsAhead } from './render-context.ts';
import { edition } from './settings.ts';
import { otherTongue } from './tongues.ts';

type Pages = 'checklists' | 'bulletins' | 'articles' | 'meetings';
type Words = { on: PageContext; context: RenderContext; Content: AstroComponentFactory; parts: Part[] };

/** The words of an entry with their page context. The page hands `context` to the tags in `Astro.locals`. */
export async function renderWords(
  almanac: Almanac,
  collection: Pages,
  { id, data: { work } }: Item<{ work?: readonly string[] | undefined }>,
): Promise<Words> {
  const on = createPageContext(almanac, import.meta.env.BASE_URL, edition.day, work);
  const context = { ...on.around, ...picturesBeside(almanac, collection) };
  const tongue = otherTongue(almanac);
  const { Content, ahead } = await rendered(collection, id, tongue);
  const number = (figures: WordsAhead['figures']): void => {
    for (const { id: figure, row } of figures) context.figure(figure, row);
  };
  const locals = new Map<string, AstroComponentFactory>();
  let before = 0;
  for (const { id: local, after } of ahead.locals) {
    number(ahead.figures.slice(before, after));
    before = after;
    const words = await localWords(local, tongue);
    if (!words) continue;
    locals.set(local, words.Content);
    on.sources.push(...words.sources);
    number(words.ahead.figures);
  }
  number(ahead.figures.slice(before));
  context.local = (local) => locals.get(local) ?? null;
  return { on, context, Content, parts: ahead.parts };
}

type FieldTests = { tests: Map<string, AstroComponentFactory>; context: RenderContext };

/** Bulletins of which only the field test is shown. Astro renders each of them completely, so their `context` shows no other figure. */
export async function renderFieldTests(bulletins: readonly string[], context: RenderContext): Promise<FieldTests> {
  const tests = new Map<string, AstroComponentFactory>();
  const shown = new Map<string, FigureShown | null>();
  const nameOf = (figure: string, row?: string): string => `${figure} ${row ?? ''}`;
  for (const bulletin of bulletins) {
    const { Content, ahead } = await rendered('bulletins', bulletin);
    for (const { id, row } of ahead.testFigures) shown.set(nameOf(id, row), context.figure(id, row));
    tests.set(bulletin, Content);
  }
  return { tests, context: { ...context, figure: (id, row) => shown.get(nameOf(id, row)) ?? null } };
}

/** How many steps a checklist has. */
export const stepsOf = async (checklist: string): Promise<number> =>
  (await rendered('checklists', checklist)).ahead.parts.reduce((sum, { steps }) => sum + steps, 0);

/** Null where nothing is written here, or it was taken down. */
async function localWords(id: string, tongue?: string): Promise<(Awaited<ReturnType<typeof rendered>> & { sources: string[] }) | null> {
  const entry = await getEntry('local', id);
  if (!entry || !isPublished(entry.data as Parameters<typeof isPublished>[0])) return null;
  return { ...(await rendered('local', id, tongue)), sources: (entry.data as { sources: string[] }).sources };
}

/** `tongue`: the language of readers who do not read that of the club. */
async function rendered(
  collection: Pages | 'local',
  id: string,
  tongue?: string,
): Promise<{ Content: AstroComponentFactory; ahead: WordsAhead }> {
  const offered = tongue && (await getEntry('offered', `${tongue}/${collection}/${id}`));
  const entry = offered || (await getEntry(collection, id));
  if (!entry) throw new Error(`renderWords: needs an entry ${collection}/${id}, which the shelves name`);
  const { Content, remarkPluginFrontmatter } = await render(entry);
  return { Content, ahead: remarkPluginFrontmatter as WordsAhead };
}
