/*
 * Header files for common servers: content types, cache times, and a content policy that allows nothing from other sites. A plain folder
 * works without them, and hosts that do not know them ignore them.
 */
import type { BuiltPage } from './built-pages.ts';
import { PAGEFIND_FOLDER } from '../../shared/words/search-files.ts';
import { FILES } from './files.ts';
import { PICTURES } from './pictures.ts';
import { policyOf, written, type Policy } from './policy.ts';

export type ServerRules = {
  everywhere: Record<string, string>;
  /** Where pages are: the first folder of each, the first page, the 404 page, each with its policy. */
  pages: readonly { path: string; policy: string }[];
  /** The defaults: a policy without the script directive, which differs, and the strict policy. */
  policy: { shared: string; strict: string };
};

const POLICY = 'Content-Security-Policy';

/** File names in these folders change with their content. */
const HASHED = ['assets/', PICTURES, `${PAGEFIND_FOLDER}index/`, `${PAGEFIND_FOLDER}fragment/`];
const FOR_EVER = 'public, max-age=31536000, immutable';
const ASK_AGAIN = 'no-cache';

/** A club's own files are handed to the device's own program. In the browser's window they are nobody's page, and run nothing. */
const OF_FILES = {
  'Cache-Control': ASK_AGAIN,
  'Content-Disposition': 'attachment',
  [POLICY]: "default-src 'none'; sandbox; frame-ancestors 'none'",
};

/** Lets this worker answer at the address of a sub-folder without its last slash. */
const SLASH_WORKER = 'worker-slash.js';
const allowed = (base: string): Record<string, string> => (base === '/' ? {} : { 'Service-Worker-Allowed': base.slice(0, -1) });

/** Types that not every server knows. */
const TYPES: Record<string, string> = {
  ics: 'text/calendar; charset=utf-8',
  webmanifest: 'application/manifest+json',
  csv: 'text/csv; charset=utf-8',
  epub: 'application/epub+zip',
  pdf: 'application/pdf',
  json: 'application/json; charset=utf-8',
  woff2: 'font/woff2',
  pagefind: 'application/octet-stream',
  pf_meta: 'application/octet-stream',
  pf_index: 'application/octet-stream',
  pf_fragment: 'application/octet-stream',
};

/** `styles` are those inside a file. */
export function serverRules(pages: readonly BuiltPage[], styles: readonly string[] = []): ServerRules {
  const policyOver = (all: readonly BuiltPage[]): Policy => ({
    ...policyOf(all, styles),
    'frame-ancestors': "'none'",
  });
  const searching = pages.filter(({ searches }) => searches);
  const strict = policyOver(pages.filter((page) => !searching.includes(page)));
  const { 'default-src': _, 'script-src': __, ...shared } = strict;
  const paths = [...new Set(pages.map(({ place }) => place.replace(/\/.*/, '/')))].sort();
  const runsEngine = (path: string): boolean => path !== '' && searching.some(({ place }) => place.startsWith(path));
  return {
    pages: paths.map((path) => ({ path, policy: written(runsEngine(path) ? policyOver(pages) : strict) })),
    policy: { shared: written(shared), strict: written(strict) },
    everywhere: {
      'X-Content-Type-Options': 'nosniff',
      'X-Frame-Options': 'DENY',
      'Referrer-Policy': 'strict-origin-when-cross-origin',
      'Permissions-Policy': 'camera=(), microphone=(), geolocation=()',
    },
  };
}

/** `_headers`, which several hosts of static sites read. */
export function headersFile(base: string, { everywhere, pages, policy }: ServerRules): string {
  const rule = (path: string, headers: Record<string, string>): string =>
    [path, ...Object.entries(headers).map(([name, value]) => `  ${name}: ${value}`), ''].join('\n');
  return [
    // Some hosts combine two rules for one header, others use the nearer one. Two policies work together, and every other header is set
    // once.
    rule(`${base}*`, { ...everywhere, [POLICY]: policy.shared }),
    ...HASHED.map((folder) => rule(`${base}${folder}*`, { 'Cache-Control': FOR_EVER })),
    rule(`${base}${FILES}*`, OF_FILES),
    rule(`${base}worker.js`, { 'Cache-Control': ASK_AGAIN }),
    rule(`${base}${SLASH_WORKER}`, { 'Cache-Control': ASK_AGAIN, ...allowed(base) }),
    ...pages.map(({ path, policy: own }) =>
      rule(`${base}${path}${path.endsWith('/') ? '*' : ''}`, { 'Cache-Control': ASK_AGAIN, [POLICY]: own }),
    ),
    ...Object.entries(TYPES)
      .filter(([ending]) => ending !== 'woff2')
      .map(([ending, type]) => rule(`${base}*.${ending}`, { 'Content-Type': type })),
  ].join('\n');
}

/** `.htaccess`, for Apache and compatible servers. */
export function apacheFile(base: string, { everywhere, pages, policy }: ServerRules): string {
  const types = Object.entries(TYPES).map(([ending, type]) => `  AddType "${type}" .${ending}`);
  const headers = Object.entries({ ...everywhere, [POLICY]: policy.strict }).map(
    ([name, value]) => `  Header always set ${name} "${value}"`,
  );
  const under = (paths: readonly string[], ...lines: string[]): string[] => [
    `  <If "%{REQUEST_URI} =~ m#^${literally(base)}(${paths.map(literally).join('|')})#">`,
    ...lines.map((line) => `    ${line}`),
    '  </If>',
  ];
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
    ...pages
      .filter(({ policy: own }) => own !== policy.strict)
      .flatMap(({ path, policy: own }) => under([path], `Header always set ${POLICY} "${own}"`)),
    `  Header set Cache-Control "${ASK_AGAIN}"`,
    ...(base === '/' ? [] : under([SLASH_WORKER], `Header set Service-Worker-Allowed "${base.slice(0, -1)}"`)),
    ...under([FILES], ...Object.entries(OF_FILES).map(([name, value]) => `Header always set ${name} "${value}"`)),
    ...under(HASHED, `Header set Cache-Control "${FOR_EVER}"`),
    '</IfModule>',
    '',
    '<IfModule mod_deflate.c>',
    '  AddOutputFilterByType DEFLATE text/html text/css text/calendar text/csv text/plain application/javascript text/javascript application/json image/svg+xml',
    '</IfModule>',
    '',
  ].join('\n');
}

const literally = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
