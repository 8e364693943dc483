// Two hundred editions, one after another, on one reader's device, in Chromium.
import { test } from 'vitest';
import { inTurn, withEditions } from './editions.ts';
import { findEngine } from './installed.ts';

test('two hundred editions, some cut off, lose no tick, page or byte of a reader', { tags: ['slow'], timeout: 1_800_000 }, async () => {
  const found = findEngine('Chromium');
  if (!('start' in found)) throw new Error('Chromium was not found');
  const engine = await found.start();
  const reader = await engine.open();
  try {
    console.log(await withEditions((host, publish) => inTurn(reader, 200, host, publish)));
  } finally {
    await reader.close();
    await engine.close();
  }
});
