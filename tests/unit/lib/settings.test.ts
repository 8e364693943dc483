// What the integration hands to the pages. Addresses are resolved as RFC 3986 says.
import assert from 'node:assert/strict';
import { resolve } from 'node:path';
import { afterEach, beforeEach, test, vi } from 'vitest';
import { aDay } from '../../days.ts';

beforeEach(() => {
  vi.stubEnv('ALMANAC_SETTINGS', undefined);
  vi.resetModules();
});
afterEach(() => vi.unstubAllEnvs());

const load = () => import('../../../src/lib/settings.ts');

test('what was passed is what the pages read', async () => {
  const settings = {
    content: '/club',
    pictures: '/pictures',
    edition: { day: aDay('2026-05-01'), fingerprint: 'abc' },
  };
  (await load()).passSettings(settings);
  vi.resetModules();
  const { contentFolder, picturesFolder, edition } = await load();
  assert.deepEqual({ content: contentFolder, pictures: picturesFolder, edition }, settings);
});

test('outside a build the content is the demo club, of an edition that is none', async () => {
  const { contentFolder, edition } = await load();
  assert.deepEqual([contentFolder, edition], [resolve('content/demo-club'), { day: '1970-01-01', fingerprint: 'unbuilt' }]);
});

test('the address of the first page is known where that of the site is', async () => {
  const { rootAddress } = await load();
  assert.equal(rootAddress(new URL('https://club.example'), '/bees/'), 'https://club.example/bees/');
  assert.equal(rootAddress(undefined, '/bees/'), null);
});
