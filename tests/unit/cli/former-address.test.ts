// The address of an almanac: of an edition by its own files, of a club by `site:` in its club.yaml.
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import { addressIn, formerAddress } from '../../../src/cli/former-address.ts';

const folder = mkdtempSync(join(tmpdir(), 'address-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

for (const [yaml, base, site] of [
  ['name: A club\nsite: https://bees.example.org/\n', '/', 'https://bees.example.org'],
  ['site: https://example.org:8443/bees/almanac\n', '/bees/almanac/', 'https://example.org:8443'],
  ['name: A club\n', '/', undefined],
  ['site: not an address\n', '/', undefined],
  ['site: [\n', '/', undefined],
] as const)
  test(`site: ${JSON.stringify(yaml)}`, () => {
    writeFileSync(join(folder, 'club.yaml'), yaml);
    assert.deepEqual(addressIn(folder), { base, site });
  });

test('a folder without club.yaml, and one without an edition', () => {
  assert.deepEqual(addressIn(join(folder, 'none')), { base: '/', site: undefined });
  assert.deepEqual(formerAddress(join(folder, 'none')), { base: undefined, site: undefined });
});
