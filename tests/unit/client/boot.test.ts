// The boot script as pages contain it, run against a small document. It has no name from outside but those given here.
import assert from 'node:assert/strict';
import { runInNewContext } from 'node:vm';
import { test } from 'vitest';
import { bootScript } from '../../../src/client/layout/boot.ts';

type Rules = { createScriptURL: (address: string) => string | null };
type Browser = { stored?: string | null; room?: string; blocked?: boolean; dark?: boolean; base?: string };

const KEY = 'almanac tamarack-county/ forms';

/** The page's dataset, its classes and the policies after the script ran. */
function booted({ stored = null, room, blocked = false, dark = false, base = '/' }: Browser) {
  const dataset: Record<string, string> = { shelf: 'tamarack-county/' };
  const classes = new Set<string>();
  const policies = new Map<string, Rules>();
  runInNewContext(bootScript(base), {
    self: { trustedTypes: { createPolicy: (name: string, rules: Rules) => policies.set(name, rules) } },
    location: { origin: 'https://club.example' },
    document: { documentElement: { dataset, classList: classes } },
    localStorage: {
      getItem(key: string) {
        if (blocked) throw new Error('blocked');
        return key === KEY ? stored : null;
      },
    },
    sessionStorage: { getItem: (key: string) => (key === 'almanac tamarack-county/ room' && room) || null },
    matchMedia: (query: string) => ({ matches: dark && query === '(prefers-color-scheme:dark)' }),
  });
  const { shelf: _, ...choices } = dataset;
  return { choices, classes: [...classes], policies };
}

test('stored choices are set on the page, and nothing else that is stored', () => {
  const stored = JSON.stringify({ light: 'night', size: 'large', hands: 'left', district: 'hill', units: 'metric', phase: 'dearth' });
  const { choices, classes } = booted({ stored });
  assert.deepEqual(choices, { light: 'night', size: 'large', hands: 'left', district: 'hill', units: 'metric' });
  assert.deepEqual(classes, ['js']);
});

test('a tab that is in the hall stays there, in the light that was chosen', () => {
  assert.deepEqual(booted({ room: 'hall' }).choices, { room: 'hall' });
  assert.deepEqual(booted({ room: 'hall', stored: '{"light":"night"}' }).choices, { light: 'night', room: 'hall' });
});

test('values that are not text are left out', () => {
  assert.deepEqual(booted({ stored: JSON.stringify({ units: 3, district: null, size: ['large'], hands: 'left' }) }).choices, {
    hands: 'left',
  });
});

test('without stored choices the page follows the device: light by day, night where the device is dark', () => {
  for (const stored of [null, '', '{}']) {
    const { choices, classes } = booted({ stored });
    assert.deepEqual({ choices, classes }, { choices: {}, classes: ['js'] });
    assert.deepEqual(booted({ stored, dark: true }).choices, { light: 'night' });
  }
});

test('a stored light is kept on a dark device', () => {
  assert.deepEqual(booted({ stored: JSON.stringify({ light: 'day' }), dark: true }).choices, { light: 'day' });
});

test('storage that throws or is damaged: the page still says that scripts run', () => {
  for (const broken of [{ blocked: true }, { stored: '{"light":' }, { stored: 'null' }]) {
    const { choices, classes } = booted({ ...broken, dark: true });
    assert.deepEqual({ choices, classes }, { choices: {}, classes: ['js'] });
  }
});

test('a browser without trusted types boots as well', () => {
  const dataset: Record<string, string> = {};
  const classList = new Set<string>();
  const document = { documentElement: { dataset, classList } };
  const localStorage = { getItem: () => '{"units":"metric"}' };
  runInNewContext(bootScript('/'), { self: {}, document, localStorage, matchMedia: () => ({ matches: false }) });
  assert.deepEqual(dataset, { units: 'metric' });
  assert.deepEqual([...classList], ['js']);
});

test('only the service worker of this site may be a script made from text', () => {
  const { createScriptURL } = booted({ base: '/almanac/' }).policies.get('default')!;
  assert.equal(createScriptURL('https://club.example/almanac/worker.js?edition=1'), 'https://club.example/almanac/worker.js?edition=1');
  for (const other of ['https://club.example/worker.js', 'https://other.example/almanac/worker.js', 'data:text/javascript,0'])
    assert.equal(createScriptURL(other), null);
});

test('the script is one line that no markup can end', () => {
  assert.doesNotMatch(bootScript('/'), /\n|<\/|<!--/);
});
