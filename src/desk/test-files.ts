// Which test files there are, and which of them need a browser.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';

export interface TestFiles {
  plain: string[];
  browser: string[];
}

/** Paths from the project with forward slashes, sorted. `long` adds tests/long; `pattern` keeps the paths that contain it. */
export function findTestFiles(project: string, { long, pattern }: { long: boolean; pattern: string | undefined }): TestFiles {
  const wanted = pattern?.replaceAll('\\', '/') ?? '';
  const folder = join(project, 'tests');
  const all = existsSync(folder) ? readdirSync(folder, { recursive: true, encoding: 'utf8' }) : [];
  const files = all
    .map((path) => `tests/${path.split(sep).join('/')}`)
    .filter((path) => path.endsWith('.test.ts') && !path.includes('/node_modules/'))
    .filter((path) => (long || !path.startsWith('tests/long/')) && path.includes(wanted))
    .sort();
  const needs = new Map(files.map((path) => [path, needsBrowser(join(project, path), project, new Set())]));
  return { plain: files.filter((path) => !needs.get(path)), browser: files.filter((path) => needs.get(path)) };
}

// A browser test imports test-browser.ts, itself or through another file of tests/.
function needsBrowser(path: string, project: string, seen: Set<string>): boolean {
  if (seen.has(path)) return false;
  seen.add(path);
  const imported = importsOf(path);
  if (imported.some((name) => name.endsWith('/test-browser.ts') || name === 'playwright-core')) return true;
  return imported
    .filter((name) => name.startsWith('.'))
    .map((name) => resolve(dirname(path), name))
    .filter((file) => relative(project, file).startsWith(`tests${sep}`))
    .some((file) => needsBrowser(file, project, seen));
}

function importsOf(path: string): string[] {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch {
    return [];
  }
  // A line that begins or closes an import, or loads one on the way; not a test's text that looks like
  // one. What is imported for its types alone is gone when the file runs.
  const statements = /^(?:(?:import|export)(?! type\b)\b|\}).*?(['"])([^'"]+)\1;?\s*$|\bawait import\((['"])([^'"]+)\3\)/gm;
  return [...text.matchAll(statements)].map((match) => (match[2] ?? match[4])!);
}
