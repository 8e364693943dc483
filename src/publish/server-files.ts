/*
 * Files that tell common servers how to serve the folder: types, how long to keep what, and a policy under which nothing
 * from elsewhere runs. A plain folder works without them; a host that does not know them leaves them alone.
 */
import type { BuiltPage } from './built-pages.ts';
import { PICTURES } from './pictures.ts';
import { policyOf, written } from './policy.ts';

export type ServerRules = {
  everywhere: Record<string, string>;
  /** The folders of the site, without the one of hashed names. */
  folders: string[];
};

/** Names of the files in these folders change with what is in them. */
const HASHED = ['assets/', PICTURES];
const FOR_EVER = 'public, max-age=31536000, immutable';
const ASK_AGAIN = 'no-cache';

/** Types that not every server knows. */
const TYPES: Record<string, string> = {
  ics: 'text/calendar; charset=utf-8',
  webmanifest: 'application/manifest+json',
  csv: 'text/csv; charset=utf-8',
  epub: 'application/epub+zip',
  json: 'application/json; charset=utf-8',
  woff2: 'font/woff2',
};

/** `styles` are those that stand in a file itself. */
export function serverRules(pages: readonly BuiltPage[], styles: readonly string[] = []): ServerRules {
  const policy = written({
    ...policyOf(
      pages.map(({ html }) => html),
      styles,
    ),
    'frame-ancestors': "'none'",
  });
  const folders = new Set(pages.map(({ place }) => place.replace(/\/.*/, '/')).filter((place) => place.endsWith('/')));
  return {
    folders: [...folders].sort(),
    everywhere: {
      'Content-Security-Policy': policy,
      'X-Content-Type-Options': 'nosniff',
      'X-Frame-Options': 'DENY',
      'Referrer-Policy': 'strict-origin-when-cross-origin',
      'Permissions-Policy': 'camera=(), microphone=(), geolocation=()',
    },
  };
}

/** `_headers`, which several hosts of static sites read. */
export function headersFile(base: string, { everywhere, folders }: ServerRules): string {
  const rule = (path: string, headers: Record<string, string>): string =>
    [path, ...Object.entries(headers).map(([name, value]) => `  ${name}: ${value}`), ''].join('\n');
  return [
    rule(`${base}*`, everywhere),
    // Some hosts join two rules that name one header, so each address is in one of these only.
    ...HASHED.map((folder) => rule(`${base}${folder}*`, { 'Cache-Control': FOR_EVER })),
    rule(base, { 'Cache-Control': ASK_AGAIN }),
    rule(`${base}worker.js`, { 'Cache-Control': ASK_AGAIN }),
    ...folders.map((folder) => rule(`${base}${folder}*`, { 'Cache-Control': ASK_AGAIN })),
    ...Object.entries(TYPES)
      .filter(([ending]) => ending !== 'woff2')
      .map(([ending, type]) => rule(`${base}*.${ending}`, { 'Content-Type': type })),
  ].join('\n');
}

/** `.htaccess`, for Apache and servers that read its files. */
export function apacheFile(base: string, { everywhere }: ServerRules): string {
  const types = Object.entries(TYPES).map(([ending, type]) => `  AddType "${type}" .${ending}`);
  const headers = Object.entries(everywhere).map(([name, value]) => `  Header always set ${name} "${value}"`);
  return [
    `ErrorDocument 404 ${base}404.html`,
    'DirectoryIndex index.html',
    'Options -Indexes',
    'AddDefaultCharset utf-8',
    '',
    '<IfModule mod_mime.c>',
    ...types,
    '</IfModule>',
    '',
    '<IfModule mod_headers.c>',
    ...headers,
    `  Header set Cache-Control "${ASK_AGAIN}"`,
    `  <If "%{REQUEST_URI} =~ m#^${base.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(${HASHED.join('|')})#">`,
    `    Header set Cache-Control "${FOR_EVER}"`,
    '  </If>',
    '</IfModule>',
    '',
    '<IfModule mod_deflate.c>',
    '  AddOutputFilterByType DEFLATE text/html text/css text/calendar text/csv text/plain application/javascript text/javascript application/json image/svg+xml',
    '</IfModule>',
    '',
  ].join('\n');
}
