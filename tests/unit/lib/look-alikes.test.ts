// A trouble beside its look-alikes. The cells are the rows of the sign finder, so nothing outside is compared here.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { lookAlikes } from '../../../src/lib/look-alikes.ts';
import { almanacOf } from './almanac.ts';

const sign = (id: string) => ({ id, data: { title: `It ${id}` } });
const shown = (of: string, strength: string, shows: string) => ({ sign: of, strength, shows });
const trouble = (id: string, signs: unknown[], alike: string[] = []) => ({
  id,
  data: { title: id.toUpperCase(), signs, 'looks-like': alike },
});

const sick = trouble('sick', [shown('ropes', 'strong', 'often'), shown('crumbles', 'fair', 'never')], ['hard', 'gone', 'bare']);
const hard = trouble('hard', [shown('crumbles', 'strong', 'always'), shown('smells', 'weak', 'seldom')]);
const bare = trouble('bare', []);
const club = almanacOf({ bulletins: [sick, hard, bare], signs: ['ropes', 'crumbles', 'smells'].map(sign) });
const of = (id: string) =>
  lookAlikes(
    club,
    club.bulletins.find((bulletin) => bulletin.id === id)!,
  );

test('its own signs come first, then what points strongly to another; weak signs of others are left out', () => {
  assert.deepEqual(of('sick'), {
    troubles: [{ title: 'SICK' }, { title: 'HARD' }],
    signs: [
      { words: 'It ropes', cells: [{ shows: 'often', strong: true }, { shows: '', strong: false }] },
      { words: 'It crumbles', cells: [{ shows: 'never', strong: false }, { shows: 'always', strong: true }] },
    ],
  }); // prettier-ignore
});

test('a trouble that nothing is taken for, or without signs, has no table', () => {
  assert.equal(of('hard'), null);
  assert.equal(of('bare'), null);
});
