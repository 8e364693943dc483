/* The ten tasks of SPEECH.md, done with the keyboard alone. What a screen reader would say is read from the accessibility tree. */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import type { CDPSession, Page } from '@playwright/test';
import { expect } from '@playwright/test';
import { test } from './fixtures.ts';
import { phone } from './visit.ts';

const FARTHEST = 90;

type Row = { act: string; heard: string[] };

const tasks = readFileSync(new URL('../SPEECH.md', import.meta.url), 'utf8')
  .split(/^## /m)
  .slice(1)
  .map((part) => ({ title: part.split('\n')[0]!, rows: rowsOf(part) }));

function rowsOf(part: string): Row[] {
  return part
    .split('\n')
    .filter((line) => line.startsWith('|') && !/^\| (?:do|---) /.test(line))
    .map(
      (line) =>
        line
          .slice(1, -1)
          .split('|')
          .map((cell) => cell.trim()) as [string, string],
    )
    .map(([act, heard]) => ({ act, heard: heard.split('; ').filter(Boolean) }));
}

test('the page of tasks has ten, and every one ends with something to hear', () => {
  assert.equal(tasks.length, 10);
  for (const { title, rows } of tasks) assert.ok(rows.length > 1 && rows.at(-1)!.heard.length > 0, title);
});

for (const { title, rows } of tasks)
  test(`by keyboard and speech: ${title}`, async ({ browser, demo }) => {
    const context = await browser.newContext({ ...phone, reducedMotion: 'reduce' });
    const page = await context.newPage();
    await page.clock.setFixedTime('2026-04-20T14:00Z');
    const tree = await context.newCDPSession(page);
    for (const { act, heard } of rows) {
      await does(page, tree, demo.address, act);
      for (const words of heard) await hears(page, tree, words, act);
    }
    await context.close();
  });

async function does(page: Page, tree: CDPSession, site: string, act: string): Promise<void> {
  const [, verb, what] = /^(Open|Tab to|Type|Press) [“]?([^”]+)[”]?$/.exec(act) ?? [];
  if (verb === 'Open') await page.goto(site + what!.slice(1));
  else if (verb === 'Type') await page.keyboard.type(what!);
  else if (verb === 'Press') await page.keyboard.press(what!);
  else if (verb === 'Tab to') {
    const passed: string[] = [];
    for (let stops = 0; stops < FARTHEST; stops += 1) {
      await page.keyboard.press('Tab');
      const said = await spoken(tree);
      if (said.includes(`“${what}”`)) return;
      passed.push(said);
    }
    assert.fail(`${act}: passed ${passed.join(' · ')}`);
  } else assert.fail(`nobody knows how to do “${act}”`);
}

async function hears(page: Page, tree: CDPSession, words: string, after: string): Promise<void> {
  const [, kind, text] = /^(page|status) “(.+)”$/.exec(words) ?? [];
  if (kind === 'page') await expect(page, after).toHaveTitle(new RegExp(`^${text}(?: · |, |$)`));
  else if (kind === 'status')
    await expect(
      page.locator('[role=status], [role=alert], [aria-live=polite], output').filter({ hasText: text! }).first(),
      after,
    ).toBeAttached();
  else await expect.poll(() => spoken(tree), { message: after }).toBe(words);
}

type Value = { value?: unknown };
type Heard = { role?: Value; name?: Value; description?: Value; properties?: { name: string; value: Value }[] };

const ROLES: Record<string, string> = { DisclosureTriangle: 'disclosure' };

/** Role, name, description and state of the element that has the focus: `checkbox “Look”, not checked`. */
async function spoken(tree: CDPSession): Promise<string> {
  const { result } = await tree.send('Runtime.evaluate', { expression: 'document.activeElement' });
  const { nodes } = (await tree.send('Accessibility.getPartialAXTree', { objectId: result.objectId!, fetchRelatives: false })) as {
    nodes: Heard[];
  };
  const node = nodes[0]!;
  const role = String(node.role?.value);
  const states = new Map(node.properties?.map(({ name, value }) => [name, value.value]));
  return [
    `${ROLES[role] ?? role} “${String(node.name?.value ?? '')}”`,
    node.description?.value ? `“${String(node.description.value)}”` : '',
    states.has('checked') ? (states.get('checked') === 'true' || states.get('checked') === true ? 'checked' : 'not checked') : '',
    states.has('pressed') ? (states.get('pressed') === 'true' ? 'pressed' : 'not pressed') : '',
    states.has('expanded') && role !== 'combobox' ? (states.get('expanded') ? 'open' : 'closed') : '',
    states.get('invalid') === 'true' ? 'invalid' : '',
  ]
    .filter(Boolean)
    .join(', ')
    .replaceAll('\u00a0', ' ');
}
