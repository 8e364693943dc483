// What has one place: the list of collections, and the rules of a class.
import assert from 'node:assert/strict';
import ts from 'typescript';
import { test } from 'vitest';
import { collectionNames } from '../../src/schemas/collections.ts';
import { codeOf, files, isCode, read } from './tree.ts';

const src = files('src');

const namesIn = (node: ts.Node): (string | undefined)[] => {
  const nameOf = (part: ts.ClassElement | ts.TypeElement | ts.ObjectLiteralElementLike) => part.name?.getText().replace(/'/g, '');
  if (ts.isArrayLiteralExpression(node)) return node.elements.filter(ts.isStringLiteralLike).map(({ text }) => text);
  if (ts.isObjectLiteralExpression(node)) return node.properties.map(nameOf);
  if (ts.isTypeLiteralNode(node) || ts.isInterfaceDeclaration(node)) return node.members.map(nameOf);
  if (ts.isUnionTypeNode(node)) return node.types.map((type) => type.getText().replace(/'/g, ''));
  return [];
};

/** Whether the code lists more than half of the collections in one array, object or type. */
function listsCollections(path: string, code: string): boolean {
  const lists = (node: ts.Node): boolean =>
    collectionNames.filter((name) => namesIn(node).includes(name)).length > collectionNames.length / 2 ||
    (ts.forEachChild(node, (child) => lists(child) || undefined) ?? false);
  return lists(ts.createSourceFile(path, code, ts.ScriptTarget.Latest, true));
}

test('the collections are listed in one place; three others say what each is to readers, how pages get it, and what of it is words', () => {
  assert.deepEqual(
    src.filter((path) => isCode(path) && listsCollections(path, codeOf(path))),
    [
      'src/lib/almanac.ts',
      'src/lib/withdrawn.en.ts',
      'src/lib/withdrawn.es.ts',
      'src/schemas/collections.ts',
      'src/schemas/translations.ts',
    ],
  );
  const most = collectionNames.slice(0, Math.floor(collectionNames.length / 2) + 1);
  assert.ok(listsCollections('a.ts', `const all = [${most.map((name) => `'${name}'`).join(', ')}];`));
  assert.ok(listsCollections('a.ts', `type Name = ${most.map((name) => `'${name}'`).join(' | ')};`));
  assert.ok(!listsCollections('a.ts', `const few = ['${most[0]}', '${most[1]}'];`));
});

/** Classes with a rule of their own (`.card { }`) by file. `.result .big` is a part of a result, and no rule of its own. */
const ownClasses = (sheets: readonly string[]): Set<string> =>
  new Set(
    sheets
      .flatMap((sheet) => [...sheet.replace(/\/\*[\s\S]*?\*\//g, '').matchAll(/([^{};]+)\{/g)])
      .flatMap(([, selectors]) => selectors!.replace(/\([^()]*\)/g, '').split(','))
      .flatMap((selector) => /^[a-z0-9]*\.([a-z][\w-]*)$/.exec(selector.trim())?.[1] ?? []),
  );

/** Print rules of what every page shares are in a sheet of their own. The book's sheets are not the site's. */
const sheetsOf = (path: string): string[] =>
  path.endsWith('.astro')
    ? [...read(path).matchAll(/<style[^>]*>([\s\S]*?)<\/style>/g)].map(([, sheet]) => sheet!)
    : /^src\/styles\/(?!print)[^/]*\.css$/.test(path)
      ? [read(path)]
      : [];

const twice = (classes: ReadonlyMap<string, ReadonlySet<string>>): string[] => {
  const all = [...classes].flatMap(([path, names]) => [...names].map((name) => [name, path] as const));
  return all.filter(([name, path]) => all.some(([other, where]) => other === name && where !== path)).map((each) => each.join(' in '));
};

test('a class has rules of its own in one file, so that its name means one thing', () => {
  const classes = new Map(src.map((path) => [path, ownClasses(sheetsOf(path))] as const));
  assert.ok([...classes.values()].reduce((sum, names) => sum + names.size, 0) > 60);
  assert.deepEqual(twice(classes), []);
  const card = ownClasses(['@media screen { section.card, .list > .card { color: red } }']);
  assert.deepEqual(twice(new Map([['a.astro', card], ['b.astro', card], ['c.astro', ownClasses(['.c .card {}'])]])), ['card in a.astro', 'card in b.astro']); // prettier-ignore
});
