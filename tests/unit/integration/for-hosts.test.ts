// Files for hosts and search engines, and the record with which a later edition is compared.
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { test } from 'vitest';
import { builtPage, isPublished, mainWords, titleOf, type BuiltPage } from '../../../src/integration/built-pages.ts';
import { editionRecord, type EditionRecord } from '../../../src/integration/edition-record.ts';
import { PAGEFIND_FOLDER } from '../../../shared/words/search-files.ts';
import { apacheFile, headersFile, serverRules } from '../../../src/integration/server-files.ts';
import { sitemap } from '../../../src/integration/sitemap.ts';
import { robots } from '../../../src/lib/robots.ts';
import { aDay } from '../../days.ts';

const html = (main: string, margin = ''): string =>
  `<!doctype html><head><script>awake()</script><script type="module" src="/assets/leaf.a1.js"></script></head><main id="text"><h1>Bees &amp; <b>wasps</b></h1>${main}<aside class="sidebar" aria-label="x">${margin}</aside></main>`;
const page = (place: string, main = '', margin = ''): BuiltPage =>
  builtPage(place.endsWith('.html') ? place : `${place}index.html`, html(main, margin));
const pages = [page(''), page('404.html'), page('lists/one/'), page('lists/two/'), page('year/')];
const withSearch = [...pages, page('search/', '<form class="asks" data-search-page></form>')];

test('the words of a page: no source mark in a number, cells apart, characters decoded', () => {
  const words = mainWords(
    page(
      '',
      '<p>57 °F (14&nbsp;°C)<sup class="mark"><a href="#n">7</a></sup>, 2&#58;1 &lt; 3</p><table><tr><td>3</td><td>12</td></tr></table><script>no</script>',
      'checked',
    ),
  );
  assert.equal(words, 'Bees & wasps 57 °F (14 °C), 2:1 < 3 3 12');
  assert.equal(titleOf(page('')), 'Bees & wasps');
});

test('the 404 page is in no list', () =>
  assert.deepEqual(
    pages.filter(isPublished).map(({ place }) => place),
    ['', 'lists/one/', 'lists/two/', 'year/'],
  ));

test('sitemap: complete addresses, special characters escaped', () => {
  const made = sitemap('https://club.example/bees/', [page(''), page('lists/a&b/')]);
  assert.equal(
    made,
    [
      '<?xml version="1.0" encoding="UTF-8"?>',
      '<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">',
      '  <url><loc>https://club.example/bees/</loc></url>',
      '  <url><loc>https://club.example/bees/lists/a&amp;b/</loc></url>',
      '</urlset>',
      '',
    ].join('\n'),
  );
});

test('robots: a demonstration is closed; a club is open and names its sitemap', () => {
  assert.equal(robots('https://demo.example/', true), 'User-agent: *\nDisallow: /\n');
  assert.equal(robots('https://club.example/bees/', false), 'User-agent: *\nDisallow:\n\nSitemap: https://club.example/bees/sitemap.xml\n');
  assert.equal(robots(null, false), 'User-agent: *\nDisallow:\n');
});

test("headers: one rule per address, hashed files for ever, pages revalidated, the page's own script by its hash", () => {
  const made = headersFile('/club/', serverRules(withSearch));
  const rules = made
    .trim()
    .split('\n\n')
    .map((rule) => rule.split('\n'));
  const caching = rules.filter((rule) => rule.some((line) => line.includes('Cache-Control')));
  assert.deepEqual(
    caching.map(([path, line]) => `${path} ${line!.trim()}`),
    [
      '/club/assets/* Cache-Control: public, max-age=31536000, immutable',
      '/club/pictures/* Cache-Control: public, max-age=31536000, immutable',
      `/club/${PAGEFIND_FOLDER}index/* Cache-Control: public, max-age=31536000, immutable`,
      `/club/${PAGEFIND_FOLDER}fragment/* Cache-Control: public, max-age=31536000, immutable`,
      '/club/files/* Cache-Control: no-cache',
      '/club/worker.js Cache-Control: no-cache',
      '/club/worker-slash.js Cache-Control: no-cache',
      '/club/ Cache-Control: no-cache',
      '/club/404.html Cache-Control: no-cache',
      '/club/lists/* Cache-Control: no-cache',
      '/club/search/* Cache-Control: no-cache',
      '/club/year/* Cache-Control: no-cache',
    ],
  );
  const [everywhere] = rules;
  assert.equal(everywhere![0], '/club/*');
  const policies = new Map(rules.map(([path, ...lines]) => [path!, lines.find((line) => line.includes('Content-Security-Policy')) ?? '']));
  const hash = createHash('sha256').update('awake()').digest('base64');
  for (const path of ['/club/', '/club/404.html', '/club/lists/*', '/club/search/*', '/club/year/*']) {
    const wasm = path === '/club/search/*' ? " 'wasm-unsafe-eval'" : '';
    for (const part of [`script-src 'self'${wasm} 'sha256-${hash}';`, "default-src 'self'", "frame-ancestors 'none'"])
      assert.ok(policies.get(path)!.includes(part), `${path}: ${part}`);
  }
  for (const part of ["frame-ancestors 'none'", "base-uri 'none'", "object-src 'none'"])
    assert.ok(policies.get('/club/*')!.includes(part), part);
  assert.doesNotMatch(policies.get('/club/*')!, /script-src|default-src|wasm/);
  assert.ok(
    everywhere!.includes('  X-Content-Type-Options: nosniff') && everywhere!.includes('  Referrer-Policy: strict-origin-when-cross-origin'),
  );
  assert.ok(
    made.includes(
      "/club/files/*\n  Cache-Control: no-cache\n  Content-Disposition: attachment\n  Content-Security-Policy: default-src 'none'; sandbox; frame-ancestors 'none'\n",
    ),
    "a club's own files are saved or handed on, never shown as a part of the site",
  );
  assert.ok(made.includes('/club/worker-slash.js\n  Cache-Control: no-cache\n  Service-Worker-Allowed: /club\n'));
  assert.doesNotMatch(headersFile('/', serverRules(withSearch)), /Service-Worker-Allowed/);
  assert.ok(made.includes('/club/*.ics\n  Content-Type: text/calendar; charset=utf-8'));
  assert.ok(made.includes('/club/*.pf_index\n  Content-Type: application/octet-stream'));
});

test('Apache: the same rules, and our own 404 page', () => {
  const made = apacheFile('/club/', serverRules(withSearch));
  assert.ok(made.startsWith('ErrorDocument 404 /club/404.html\n'));
  const folder = PAGEFIND_FOLDER.replaceAll('.', '\\.');
  assert.ok(
    made.includes(
      `<If "%{REQUEST_URI} =~ m#^/club/(assets/|pictures/|${folder}index/|${folder}fragment/)#">\n    Header set Cache-Control "public, max-age=31536000, immutable"`,
    ),
  );
  assert.ok(made.includes('  Header set Cache-Control "no-cache"'));
  assert.ok(made.includes('AddType "text/calendar; charset=utf-8" .ics'));
  const policies = [...made.matchAll(/Header always set Content-Security-Policy "([^"]*)"/g)].map(([, policy]) => policy!);
  const plain = headersFile('/club/', serverRules(withSearch));
  assert.equal(policies.length, 3);
  for (const policy of policies) assert.ok(plain.includes(`Content-Security-Policy: ${policy}\n`), 'one policy in both');
  assert.match(
    made,
    /<If "%\{REQUEST_URI\} =~ m#\^\/club\/\(search\/\)#">\n {4}Header always set Content-Security-Policy "[^"]*'wasm-unsafe-eval'/,
  );
  assert.match(
    made,
    /<If "%\{REQUEST_URI\} =~ m#\^\/club\/\(files\/\)#">\n.*\n {4}Header always set Content-Disposition "attachment"\n {4}Header always set Content-Security-Policy "default-src 'none'; sandbox; frame-ancestors 'none'"/,
  );
  assert.match(made, /#\^\/club\/\(worker-slash\\\.js\)#">\n {4}Header set Service-Worker-Allowed "\/club"\n/);
  assert.ok(!policies[0]!.includes('wasm'));
  assert.equal(made.match(/<(?!\/)\w+/g)!.length, made.match(/<\/\w+/g)!.length);
});

test('edition: a page differs when its words do, but not for its sidebar or its markup', () => {
  const edition = { day: aDay('2026-04-18'), fingerprint: 'f00d' };
  const of = (each: BuiltPage): EditionRecord =>
    JSON.parse(editionRecord(edition, 'ours', [each], { 'files/form.pdf': { title: 'Form (PDF)', sha256: '5' } })) as EditionRecord;
  const first = of(page('pests/varroa/', '<p>Act at 3</p>', 'checked 1 May'));
  assert.deepEqual(
    { ...first, pages: Object.keys(first.pages) },
    {
      ...edition,
      mark: 'f00d',
      club: 'ours',
      pages: ['pests/varroa/'],
      files: { 'files/form.pdf': { title: 'Form (PDF)', sha256: '5' } },
    },
  );
  assert.equal(first.pages['pests/varroa/']!.title, 'Bees & wasps');
  assert.match(first.pages['pests/varroa/']!.sha256, /^[0-9a-f]{64}$/);
  assert.deepEqual(of(page('pests/varroa/', '<p class="new">Act <b>at</b> 3</p>', 'checked 2 May')), first);
  assert.notDeepEqual(of(page('pests/varroa/', '<p>Act at 2</p>', 'checked 1 May')), first);
  // The name of the edition on a page is no change of the page.
  const named = (fingerprint: string): unknown => {
    const shown = page('about/', `<p>Edition of April\u00a018, 2026\u00a0(${fingerprint}), by us</p>`, '');
    return (JSON.parse(editionRecord({ ...edition, fingerprint }, 'ours', [shown], {})) as EditionRecord).pages;
  };
  assert.deepEqual(named('f00d'), named('beef'));
});
