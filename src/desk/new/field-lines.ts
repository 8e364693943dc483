/*
 * The fields of a schema as lines of YAML to fill in: above each a remark from the schema itself, so that a field that is
 * added there is never missing here. What must be there stands as a blank; what may be left out stands behind a number
 * sign, with an example.
 */
import { z } from 'astro/zod';
import { stringify } from 'yaml';
import { remark } from './remarks.ts';

/** Values of the fields at the top; `null` puts a field that may be left out there as a blank. */
export type Given = Readonly<Record<string, unknown>>;

/** The parts of a zod schema that are read here. */
export type Shaped = z.ZodType & { shape?: Record<string, Shaped>; element?: Shaped; unwrap?: () => Shaped; options?: string[]; values?: Set<unknown> };

const LONGEST = 110;

/** Every field of a section, each after its remark. */
export function fieldLines(section: z.ZodType, given: Given = {}): string[] {
  return Object.entries((section as Shaped).shape ?? {}).flatMap(([name, field]) => linesOf(name, field, { given: given[name], asExample: false }));
}

/** `asExample`: inside a section that is not in use, where blanks show their examples. */
type How = { given?: unknown; asExample: boolean };

function linesOf(name: string, field: Shaped, { given, asExample }: How): string[] {
  const used = given !== undefined || !field.isOptional();
  const lines = valueLines(name, inner(field), { given: used && !asExample ? given : exampleOf(field), asExample: asExample || !used });
  return [...folded(remark(field)), ...(used ? lines : lines.map((line) => `#${line}`))];
}

function valueLines(name: string, field: Shaped, { given, asExample }: How): string[] {
  if (given !== undefined && given !== null) return written(name, given);
  const within = (section: Shaped): string[] => Object.entries(section.shape!).flatMap(([key, held]) => linesOf(key, held, { asExample }));
  if (field.shape) return [`${name}:`, ...within(field).map(indented)];
  if (!field.element) return [field.values?.size === 1 && !field.options ? `${name}: ${String([...field.values][0])}` : `${name}:`];
  const item = inner(field.element);
  return [`${name}:`, ...(item.shape ? asItem(within(item)) : ['  -'])];
}

/** Fields as one item of a list: the dash stands before the first that is in use, the remarks above it. */
function asItem(lines: string[]): string[] {
  const first = lines.findIndex((line) => !line.startsWith('#'));
  return lines.map((line, index) => (index === first ? `  - ${line}` : `    ${line}`));
}

const written = (name: string, value: unknown): string[] => stringify({ [name]: value }, { lineWidth: 0 }).trimEnd().split('\n');

/** What a field that is not in use shows: its own example, or the first of its choices; nothing for a section. */
export function exampleOf(field: Shaped): unknown {
  const held = inner(field);
  const own = (z.globalRegistry.get(field) ?? {}).examples ?? z.globalRegistry.get(held)?.examples;
  if (Array.isArray(own)) return own[0];
  if (held.options) return held.options[0];
  if (held.def.type === 'boolean') return true;
  const item = held.element && exampleOf(held.element);
  return item === undefined ? undefined : [item];
}

/** The field itself, without what says that it may be left out. */
export function inner(field: Shaped): Shaped {
  return field.def.type === 'optional' && field.unwrap ? inner(field.unwrap()) : field;
}

const indented = (line: string): string => `  ${line}`;

/** A remark on as many lines as it needs. */
export function folded(text: string): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + word.length < LONGEST) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(`# ${word}`);
  }
  return lines;
}
