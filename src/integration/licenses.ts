/*
 * `licenses.txt`: what others made of that which stands in the site, and their terms word for word. The scripts' packages
 * are those whose modules the bundlers put into them; the text face, the time zones and the search engine are named here.
 */
import { existsSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** Left beside the drawn pages by the bundler (astro.config): the modules of packages in the pages' scripts. */
const MODULES = 'shipped.json';

/** The modules in the scripts of the pages, as paths; the list of them goes from the site. */
export function takeModules(site: string): string[] {
  const file = join(site, MODULES);
  const modules = JSON.parse(readFileSync(file, 'utf8')) as string[];
  rmSync(file);
  return modules;
}

const FACE = {
  name: 'Atkinson Hyperlegible Next',
  what: 'the text face, cut down to the letters that are used',
  terms: new URL('../styles/fonts/OFL.txt', import.meta.url),
};
/** What no bundler sees: zone blocks stand in the calendars, and the search engine is copied as it comes. */
const COPIED = ['timezones-ical-library', 'pagefind'];

/** `modules` are paths of files; those outside of packages are our own. @throws Error when a package brings no terms. */
export function licensesFile(modules: readonly string[], packages: string): string {
  const folders = new Set([...modules.flatMap((path) => packageFolder(path) ?? []), ...COPIED.map((name) => join(packages, name))]);
  const parts = [...folders].map(termsIn).sort((one, other) => (one.name < other.name ? -1 : 1));
  const list = parts.map(({ name, version, license }) => `${name} ${version}, ${license}`);
  return [
    "What others made of that which stands in these pages, and on what terms. All else is the almanac's own.",
    '',
    `${FACE.name}, ${FACE.what}, SIL Open Font License 1.1`,
    ...list,
    '',
    ...[{ name: FACE.name, text: readFileSync(FACE.terms, 'utf8') }, ...parts].flatMap(({ name, text }) => [
      `---------- ${name} ----------`,
      '',
      text.replace(/\r\n/g, '\n').trim(),
      '',
    ]),
  ].join('\n');
}

/** The folder of the package that a file belongs to: below the last node_modules, with its scope. */
const packageFolder = (path: string): string | null => /^(.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/@]+)[\\/]/.exec(path)?.[1] ?? null;

function termsIn(folder: string): { name: string; version: string; license: string; text: string } {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as {
    name: string;
    version: string;
    license?: string;
  };
  const file = existsSync(folder) ? readdirSync(folder).find((each) => /^licen[cs]e(\.(md|txt))?$/i.test(each)) : undefined;
  if (!license || !file) throw new Error(`the package ${name} brings no terms under which its code may be published`);
  return { name, version, license, text: textIn(join(folder, file)) };
}

/** Some packages have a folder of terms: their own, and those of what they hold. */
const textIn = (path: string): string =>
  statSync(path).isDirectory()
    ? readdirSync(path)
        .sort()
        .map((name) => textIn(join(path, name)))
        .join('\n')
    : readFileSync(path, 'utf8');
