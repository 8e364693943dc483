/* Numbers of a text and of its translation. How countries write numbers: Unicode CLDR, through Intl. */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { otherNumbers } from '../../../../shared/numbers/numbers-in.ts';

const differs = (english: string, spanish: string): ReturnType<typeof otherNumbers> =>
  otherNumbers({ texts: [english], tongue: 'en' }, { texts: [spanish], tongue: 'es' });
const SAME = { missing: [], added: [] };

test('a number is the same however its country writes it', () => {
  for (const language of ['es-ES', 'es-MX', 'es-US', 'es-AR', 'es-CL'])
    for (const value of [7, 0.5, 1.25, 1250, 12_345, 250_000, 2.125]) {
      const [english, spanish] = ['en-US', language].map((each) => new Intl.NumberFormat(each, { maximumFractionDigits: 3 }).format(value));
      assert.deepEqual(differs(`about ${english} bees`, `unas ${spanish} abejas`), SAME, `${english} ${spanish}`);
    }
});

test('another number is found, also one whose decimals or thousands were lost', () => {
  assert.deepEqual(differs('1.25 kg', '125 kg'), { missing: ['1.25'], added: [{ number: '125', at: 0 }] });
  assert.deepEqual(differs('1,000 bees', '1 abeja'), { missing: ['1,000'], added: [{ number: '1', at: 0 }] });
  assert.deepEqual(differs('0.5 L', '5 L'), { missing: ['0.5'], added: [{ number: '5', at: 0 }] });
  assert.deepEqual(differs('feed 2 times', 'alimente'), { missing: ['2'], added: [] });
  assert.deepEqual(differs('feed', 'alimente ½'), { missing: [], added: [{ number: '½', at: 0 }] });
  assert.deepEqual(differs('3 and 3', '3').missing, ['3']);
});

test('the order does not matter, and days are left out', () => {
  assert.deepEqual(differs('2 boxes, 3 frames', '3 cuadros, 2 cajas'), SAME);
  assert.deepEqual(differs('On April 18, 2026 and May 3 to 5', 'El 18 de abril de 2026 y del 3 al 5 de mayo'), SAME);
  assert.deepEqual(differs('18 April, 2026-04-18', '18 de abril'), SAME);
  assert.deepEqual(differs('May 3 mites fall', 'Caen 3 ácaros').added, [{ number: '3', at: 0 }]);
});
