// A page in two languages: each links to the other, a tick is on both, and the search finds the Spanish page by a Spanish word.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import { expect } from '@playwright/test';
import { choose } from './visit.ts';

const LIST = 'lists/package-arrival/';

test('a Spanish reader finds the list of the package, follows it, and keeps her ticks in both languages', async ({ browser, demo }) => {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.goto(demo.at('/search/?q=enjambre'));
  const spanish = page.locator('[data-search-other]');
  await expect(spanish.getByRole('heading', { name: 'En español' })).toBeVisible();
  assert.equal(await spanish.getAttribute('lang'), 'es');
  const found = await spanish.getByRole('link').evaluateAll((links) => links.map((link) => link.getAttribute('href')));
  assert.ok(
    found.some((address) => address?.includes('/es/know-how/swarms/')),
    String(found),
  );

  await page.goto(demo.at(`/${LIST}`));
  await page.getByRole('link', { name: 'Esta página en español' }).click();
  await expect(page).toHaveURL(demo.at(`/es/${LIST}`));
  await expect(page.locator('h1')).toHaveAttribute('lang', 'es');
  await expect(page.locator('[data-hazard] ul').first()).toHaveAttribute('lang', 'es');
  await page.locator('[data-tick=cluster]').check();
  await expect(page.locator('.languages')).toContainText('todavía no ha revisado');
  await expect(page.locator('.part [data-count]').first()).toHaveText('1 de 6');
  assert.equal(
    await page
      .locator('[data-next]')
      .first()
      .evaluate((step) => getComputedStyle(step, '::before').content),
    '"Sigue"',
  );
  await expect(page.locator('[data-way]')).toHaveAttribute('lang', 'es');

  await page.getByRole('link', { name: 'This page in English' }).click();
  await expect(page).toHaveURL(demo.at(`/${LIST}`));
  await expect(page.locator('[data-tick=cluster]')).toBeChecked();
  assert.equal(await page.locator('#step-cluster .step-changed').count(), 0);
  await page.locator('[data-tick=dead]').check();
  await page.goBack();
  await expect(page.locator('[data-tick=dead]')).toBeChecked();
  await context.close();
});

test('within Spanish words a figure, a day and what is due are in Spanish', async ({ browser, demo }) => {
  const context = await browser.newContext({ timezoneId: 'America/New_York' });
  const page = await context.newPage();
  await page.clock.setFixedTime('2026-04-18T15:00Z');
  await page.goto(demo.at('/es/know-how/stings/'));
  await expect(page.locator('[data-figure=anaphylaxis-second-dose-minutes]').first()).toHaveText('5 minutos');
  await page.goto(demo.at('/know-how/stings/'));
  await expect(page.locator('[data-figure=anaphylaxis-second-dose-minutes]').first()).toHaveText('5 minutes');

  await page.goto(demo.at('/es/pests/varroa/'));
  await expect(page.locator('p.status')).toHaveText('Actuar');
  await expect(page.locator('.first-call a')).toHaveText(/^(?:Llamar al [\d-]+|Vea a quién llamar)$/);

  // Last syrup, as each district has it.
  await page.goto(demo.at('/es/know-how/feeders/'));
  await expect(page.locator('td [data-windows]').first()).toHaveText(/^\d+\sde\s[a-z]+$/);
  await choose(page, demo, 'district', 'hill');
  await expect(page.locator('td [data-windows]').first()).toHaveText(/^\d+\sde\s[a-z]+$/);

  await page.goto(demo.at('/es/lists/package-first-six-weeks/'));
  await expect(page.locator('.step-day').first()).toHaveText(/^del día \d+ al día \d+ después de instalarlas$/);
  await expect(page.locator('.text > p.small').filter({ hasText: 'Cuándo:' })).toContainText('sus propios días, del día');
  const asked = page.locator('section.own-day');
  await expect(asked).toHaveAttribute('lang', 'es');
  await expect(asked.locator('label[for=own-day]')).toHaveText('El día en que las instaló');
  await expect(asked.locator('.hint')).toHaveText(/^Por ejemplo, 18\sde\sabril\sde\s\d{4}\./);
  await expect(asked.locator('.choice')).toHaveText([
    'en su jaula',
    'suelta desde el principio',
    'panal construido',
    'solo cera estampada',
  ]);
  await expect(asked.locator('[data-day-back]')).toHaveAttribute('lang', /^en/);
  await page.locator('#own-day').fill('31 de abril');
  await page.locator('#own-day').press('Tab');
  await expect(page.locator('[data-day-fault]')).toContainText('31 de abril');
  await page.locator('#own-day').fill('18 de abril');
  await page.locator('#own-day').press('Tab');
  await expect(page.locator('[data-day-back]')).toContainText('April\u00a018');
  await expect(page.locator('.step-day').first()).toHaveText(/^(?:lun|mar|mié|jue|vie|sáb|dom)\s\d+.* · (?:empieza|toca|hasta|en) /);
  await expect(page.locator('[data-group] h2').first()).toHaveText('Esta semana');
  // A carried day is in the words of the button that goes on.
  await page.goto(demo.at('/es/lists/package-arrival/'));
  await page.locator('[data-tick=cluster]').check();
  await expect(page.locator('[data-action=start]')).toHaveText('Empezar, instaladas el 18\u00a0de\u00a0abril\u00a0de\u00a02026');
  await context.close();
});

test('a sentence in Spanish calls an office by its Spanish name, with its article', async ({ browser, demo }) => {
  const context = await browser.newContext();
  const page = await context.newPage();
  const said = async (path: string): Promise<string> => {
    await page.goto(demo.at(path));
    // The part is folded.
    return (await page.locator('#step-ring-inspector .reason').textContent())!.replace(/\s+/g, ' ');
  };
  assert.match(await said('/es/lists/disease-suspected/'), /Llame a la oficina estatal de inspección de apiarios, 330-555-0101\./);
  const name = page.locator('#step-ring-inspector .reason span', { hasText: 'la oficina estatal' }).first();
  assert.equal(await name.evaluate((element) => element.closest('[lang]')!.getAttribute('lang')), 'es');
  assert.match(await said('/lists/disease-suspected/'), /the state apiary inspection office, 330-555-0101/);
  await context.close();
});
