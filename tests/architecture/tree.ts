/* The project's own files, and the imports of each. */
import { readdirSync, readFileSync } from 'node:fs';
import { extname, join, posix, sep } from 'node:path';
import ts from 'typescript';
import { projectFolder } from '../../src/cli/paths.ts';

const notOurs = new Set(['node_modules', '.git', 'dist', '.astro', '.almanac', 'output', 'test-results', '.DS_Store']);
const text = new Set(['.ts', '.mjs', '.astro', '.css', '.json', '.md', '.mdx', '.yaml', '.csv', '.svg', '.txt', '']);

/** Paths from the project folder with forward slashes, sorted. */
export function files(folder = ''): string[] {
  const found = readdirSync(join(projectFolder, folder), { withFileTypes: true }).filter(({ name }) => !notOurs.has(name));
  return found.flatMap((each) => (each.isDirectory() ? files(posix.join(folder, each.name)) : [posix.join(folder, each.name)])).sort();
}

export const read = (path: string): string => readFileSync(join(projectFolder, path.split('/').join(sep)), 'utf8');
export const isText = (path: string): boolean => text.has(extname(path));
export const isCode = (path: string): boolean => /\.(ts|mjs|astro)$/.test(path);

/** The code of a file. For an Astro page: its front matter and its scripts. */
export function codeOf(path: string, content = read(path)): string {
  if (!path.endsWith('.astro')) return content;
  const [, head = ''] = /^---\n([\s\S]*?)\n---/.exec(content) ?? [];
  return [head, ...[...content.matchAll(/<script>([\s\S]*?)<\/script>/g)].map((match) => match[1]!)].join('\n');
}

export interface Import {
  /** The written specifier. */
  from: string;
  /** The project file that it resolves to, or the name of a package. */
  to: string;
  /** True for a type import. */
  typeOnly: boolean;
}

export function importsOf(path: string, content?: string): Import[] {
  const source = ts.createSourceFile(path, codeOf(path, content), ts.ScriptTarget.Latest, true);
  const found: Import[] = [];
  const take = (specifier: ts.Node | undefined, typeOnly: boolean): void => {
    if (!specifier || !ts.isStringLiteralLike(specifier)) return;
    const from = specifier.text;
    found.push({ from, to: from.startsWith('.') ? posix.normalize(posix.join(posix.dirname(path), from.split('?')[0]!)) : from, typeOnly });
  };
  const walk = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node))
      take(node.moduleSpecifier, node.importClause?.isTypeOnly === true || onlyTypes(node.importClause?.namedBindings));
    if (ts.isExportDeclaration(node))
      take(
        node.moduleSpecifier,
        node.isTypeOnly ||
          (node.exportClause !== undefined &&
            ts.isNamedExports(node.exportClause) &&
            node.exportClause.elements.every((each) => each.isTypeOnly)),
      );
    if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) take(node.arguments[0], false);
    if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) take(node.argument.literal, true);
    ts.forEachChild(node, walk);
  };
  walk(source);
  return found;
}

const onlyTypes = (bindings: ts.NamedImportBindings | undefined): boolean =>
  bindings !== undefined &&
  ts.isNamedImports(bindings) &&
  bindings.elements.length > 0 &&
  bindings.elements.every((each) => each.isTypeOnly);
