/*
 * Editor support for a club's fields: a JSON Schema (draft 7) of each kind of YAML file, and the settings that assign them, for Visual
 * Studio Code and compatible editors. Both are in folders whose names begin with a point, which the almanac ignores.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { z } from 'astro/zod';
import { club } from '../../schemas/club.ts';
import { collections } from '../../schemas/collections.ts';
import type { File } from './draft.ts';
import { remark } from './remarks.ts';

const SETTINGS = '.vscode/settings.json';
const kinds = Object.entries(collections).flatMap(([name, { schema, ending }]): [string, z.ZodType][] =>
  ending === '.yaml' ? [[name, schema]] : [],
);

/** The schemas, the settings, and the name of the extension that reads them. */
export function editorFiles(): File[] {
  const globs = Object.fromEntries(
    [['club', 'club.yaml'], ...kinds.map(([name]) => [name, `${name}/*.yaml`])].map(([name, glob]) => [`./.schemas/${name}.json`, glob]),
  );
  return [
    ...[['club', club] as const, ...kinds].map(([name, schema]): File => ({
      path: `.schemas/${name}.json`,
      text: json(z.toJSONSchema(schema, { target: 'draft-7', unrepresentable: 'any', override: explain })),
    })),
    { path: SETTINGS, text: json({ 'files.encoding': 'utf8', 'files.insertFinalNewline': true, 'yaml.schemas': globs }) },
    { path: '.vscode/extensions.json', text: json({ recommendations: ['redhat.vscode-yaml'] }) },
  ];
}

/** The remark that a template shows above the field. */
function explain({ zodSchema, jsonSchema }: { zodSchema: unknown; jsonSchema: { description?: string } }): void {
  const description = remark(zodSchema as z.ZodType);
  if (description !== '') jsonSchema.description = description;
}

const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;

/** Writes the schemas again. Existing settings that differ stay, and their paths are returned. */
export function writeEditorFiles(directory: string): { written: number; unchanged: string[] } {
  const unchanged = editorFiles()
    .filter(
      ({ path, text }) =>
        !path.startsWith('.schemas/') && existsSync(join(directory, path)) && readFileSync(join(directory, path), 'utf8') !== text,
    )
    .map(({ path }) => path);
  const files = editorFiles().filter(({ path }) => !unchanged.includes(path));
  for (const { path, text } of files) {
    mkdirSync(dirname(join(directory, path)), { recursive: true });
    writeFileSync(join(directory, path), text);
  }
  return { written: files.length, unchanged };
}
