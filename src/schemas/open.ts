/*
 * What the files under /open/ hold, as shapes: an entry as its author wrote it, without what only the shelf needs, and with
 * its id, its address and, for a bulletin, its words. The JSON Schema of each file is made from these.
 */
import { z } from 'astro/zod';
import { bulletins } from './bulletins.ts';
import { figures } from './figures.ts';
import { forage } from './forage.ts';
import { signs } from './signs.ts';
import { sources } from './sources.ts';
import { treatments } from './treatments.ts';

const about = z.strictObject({
  club: z.string(),
  place: z.string(),
  /** True where the club and its county are made up. */
  demonstration: z.boolean(),
  /** The day of the edition, and the fingerprint of what it was made from. */
  edition: z.string(),
  fingerprint: z.string(),
  /** What nobody should forget who reads these numbers elsewhere. */
  reads: z.string(),
});

const text = z.string();
const shelf = { draft: true, formerly: true, withdrawn: true } as const;
const source = sources.omit({ withdrawn: true, opened: true }).extend({ id: text });
const page = { id: text, /** From the first page on. */ address: text };
const row = figures.shape.rows.element;

export const openShapes = {
  bulletins: bulletins.omit(shelf).extend({ ...page, parts: z.array(z.strictObject({ heading: text, words: text })) }),
  figures: figures
    .omit({ ...shelf, rows: true })
    .extend({ ...page, rows: z.array(row.omit({ source: true }).extend({ source, followed: z.boolean() })) }),
  signs: signs.omit(shelf).extend({ ...page, in: z.array(z.strictObject({ bulletin: text, strength: text, shows: text })) }),
  treatments: treatments.omit(shelf).extend(page),
  forage: forage.omit(shelf).extend({ id: text }),
} as const;

export type OpenKind = keyof typeof openShapes;
export type OpenEntry<Kind extends OpenKind> = z.infer<(typeof openShapes)[Kind]>;
export type OpenAbout = z.infer<typeof about>;

export const openKinds = Object.keys(openShapes) as OpenKind[];

/** The JSON Schema (2020-12) of a whole file. */
export function openSchema(kind: OpenKind): object {
  const file = z.strictObject({ $schema: z.string(), about, [kind]: z.array(openShapes[kind] as z.ZodType) });
  return z.toJSONSchema(file, { target: 'draft-2020-12', unrepresentable: 'any' });
}
