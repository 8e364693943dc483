/*
 * Template of a schema's fields as YAML lines to fill in. A remark from the schema is above each field, so a new field of the schema
 * appears here by itself. A required field is a blank. An optional field is commented out, with an example.
 */
import { z } from 'astro/zod';
import { stringify } from 'yaml';
import { remark } from './remarks.ts';

/**
 * Values by field name. `null` adds an optional field as a blank. A section has such values itself, and a list of sections has those of
 * its single item.
 */
export type Given = Readonly<Record<string, unknown>>;

/** The parts of a zod schema that this file reads. */
export type Shaped = z.ZodType & {
  shape?: Record<string, Shaped>;
  element?: Shaped;
  unwrap?: () => Shaped;
  options?: string[];
  values?: Set<unknown>;
};

const LONGEST = 110;

/** Every field of a section, each after its remark and an empty line. */
export function fieldLines(section: z.ZodType, given: Given = {}): string[] {
  const shape = (section as Shaped).shape ?? {};
  const atTop = new Map(
    Object.entries(shape).flatMap(([name, field]): [Shaped, string][] => (sectionIn(field) ? [[sectionIn(field)!, name]] : [])),
  );
  return Object.entries(shape).flatMap(([name, field]) => [
    '',
    ...linesOf(name, field, { given: given[name], asExample: false, atTop, top: true }),
  ]);
}

/**
 * `asExample`: inside a section that is commented out, where blanks show their examples. `atTop`: sections whose fields are at the top
 * level.
 */
type How = { given?: unknown; asExample: boolean; atTop: ReadonlyMap<Shaped, string>; top?: boolean };

function linesOf(name: string, field: Shaped, { given, asExample, atTop, top }: How): string[] {
  const used = given !== undefined || !field.isOptional();
  const elsewhere = !top && !used && sectionIn(field) && atTop.get(sectionIn(field)!);
  if (elsewhere) return [...folded(`${remark(field)} Its fields are those of "${elsewhere}:" further down.`), `#${name}:`];
  const lines = valueLines(name, inner(field), {
    given: used && !asExample ? given : exampleOf(field),
    asExample: asExample || !used,
    atTop,
  });
  return [...folded(remark(field)), ...(used ? lines : lines.map((line) => `#${line}`))];
}

function valueLines(name: string, field: Shaped, { given, asExample, atTop }: How): string[] {
  const within = (section: Shaped): string[] =>
    Object.entries(section.shape!).flatMap(([key, held]) =>
      linesOf(key, held, { given: (given as Given | null | undefined)?.[key], asExample, atTop }),
    );
  if (field.shape) return [`${name}:`, ...within(field).map(indented)];
  const item = field.element && inner(field.element);
  if (item?.shape && !Array.isArray(given)) return [`${name}:`, ...asItem(within(item))];
  if (given !== undefined && given !== null) return written(name, given);
  if (item) return [`${name}:`, '  -'];
  return [field.values?.size === 1 && !field.options ? `${name}: ${String([...field.values][0])}` : `${name}:`];
}

/** The section inside a field, single or in a list. */
function sectionIn(field: Shaped): Shaped | undefined {
  const held = inner(field);
  const section = held.element ? inner(held.element) : held;
  return section.shape ? section : undefined;
}

/** Fields as one item of a list: the dash precedes the first active one, with the remarks above it. */
function asItem(lines: string[]): string[] {
  const first = lines.findIndex((line) => !line.startsWith('#'));
  return lines.map((line, index) => (index === first ? `  - ${line}` : `    ${line}`));
}

function written(name: string, value: unknown): string[] {
  const flow = Array.isArray(value) && value.every((item) => typeof item === 'number');
  return flow
    ? [`${name}: [${value.join(', ')}]`]
    : stringify({ [name]: value }, { lineWidth: 0 })
        .trimEnd()
        .split('\n');
}

/** The content of a commented-out field: its own example, or the first of its choices. Empty for a section. */
export function exampleOf(field: Shaped): unknown {
  const held = inner(field);
  const own = (z.globalRegistry.get(field) ?? {}).examples ?? z.globalRegistry.get(held)?.examples;
  if (Array.isArray(own)) return own[0];
  if (held.options) return held.options[0];
  if (held.def.type === 'boolean') return true;
  const item = held.element && !inner(held.element).shape ? exampleOf(held.element) : undefined;
  return item === undefined ? undefined : [item];
}

/** The field itself, without its optional wrapper. */
export function inner(field: Shaped): Shaped {
  return field.def.type === 'optional' && field.unwrap ? inner(field.unwrap()) : field;
}

const indented = (line: string): string => `  ${line}`;

/** A remark on as many lines as it needs. */
export function folded(text: string): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ').filter(Boolean)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + word.length < LONGEST) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(`# ${word}`);
  }
  return lines;
}
