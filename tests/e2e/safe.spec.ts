// A page of each kind on a host with our headers, with every request recorded. safe.slow tests all pages.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import { filesIn } from '../build/workshop.ts';
import { builtDemo } from '../setup/built-site.ts';
import { fromApacheFile, fromHeadersFile } from './host-headers.ts';
import { testSafe } from './safe.ts';
import { nothing, oneOfEachKind } from './visit.ts';

test.use({ offlineCopy: true });

testSafe(oneOfEachKind);

for (const base of ['/', '/club/']) {
  test(`under ${base} both files for hosts agree about every file`, async () => {
    const { folder, read } = await builtDemo({ base });
    const [plain, apache] = [fromHeadersFile(read('_headers')), fromApacheFile(read('.htaccess'))];
    const files = filesIn(folder);
    assert.ok(files.length > 300);
    nothing(
      files.flatMap((file) => {
        const address = base + file.replace(/(^|\/)index\.html$/, '$1');
        const [joined, other] = [plain(address), apache(address)];
        // Of a page's two policies in the plain file, the second is complete. Other files have only the one without scripts.
        const [shared, own] = joined['content-security-policy']!.split(', ');
        const one: Record<string, string> = { ...joined, 'content-security-policy': own ?? other['content-security-policy']! };
        if (!other['content-security-policy']!.includes(shared!.split('; ').at(-1)!)) return [`${address}: ${shared}`];
        if (file.endsWith('.html') && !/^(handbook|404)/.test(file) && !own) return [`${address}: no policy of its own`];
        if (String(own).includes('wasm') !== file.startsWith('search/')) return [`${address}: ${own}`];
        const kept = one['cache-control'] ?? 'no-cache';
        const faults = [
          'content-security-policy',
          'x-content-type-options',
          'x-frame-options',
          'referrer-policy',
          'permissions-policy',
        ].filter((name) => !one[name] || one[name] !== other[name]);
        return [
          ...faults.map((name) => `${address}: ${name}`),
          ...(kept === other['cache-control'] &&
          kept.includes('immutable') === /^(assets|pictures|pagefind-[\d.]+\/(index|fragment))\//.test(file)
            ? []
            : [`${address}: kept ${kept} and ${other['cache-control']}`]),
          ...(one['content-type'] === undefined || one['content-type'] === other['content-type']
            ? []
            : [`${address}: ${one['content-type']} and ${other['content-type']}`]),
        ];
      }),
    );
  });
}

test('rules add up, and a repeated or invalid rule is an error', () => {
  const headersFor = fromHeadersFile('/*\n  A: 1\n\n/x/*\n  B: 2\n\n/*.ics\n  C: 3\n');
  assert.deepEqual([headersFor('/x/y.ics'), headersFor('/y')], [{ a: '1', b: '2', c: '3' }, { a: '1' }]);
  assert.throws(() => fromHeadersFile('/*\n  A: 1\n\n/x\n  A: 2\n')('/x'), /twice/);
  assert.throws(() => fromHeadersFile('x\n  A: 1'), /no rule/);
  assert.throws(() => fromApacheFile('RewriteEngine On'), /not understood/);
});
