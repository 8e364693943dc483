/* Goes through a page with the Tab key alone. */
import type { Page } from '@playwright/test';

/** The focused element in words. Empty where nothing has the focus. */
export const reached = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement!;
    return at === document.body
      ? ''
      : `${at.tagName.toLowerCase()} ${(at.getAttribute('aria-label') ?? at.textContent ?? '').trim().replace(/\s+/g, ' ').slice(0, 50)}`;
  });

/** Numbers everything that can be reached, presses Tab once for each, and returns the first stop that is out of order. */
export async function tabThrough(page: Page): Promise<string[]> {
  // The first page chooses its rows after it has loaded.
  await page.locator('html.arranged').waitFor({ state: 'attached' });
  const all = await page.evaluate(() => {
    const named = [...document.querySelectorAll<HTMLElement>('a[href], button, input, select, textarea, summary, [tabindex]')].filter(
      (element) => element.tabIndex >= 0 && !element.matches(':disabled') && element.checkVisibility({ visibilityProperty: true }),
    );
    // Only one of a group of radio buttons is a stop.
    const stops = named.filter(
      (element) =>
        !(element instanceof HTMLInputElement && element.type === 'radio') ||
        element.checked ||
        !document.querySelector(`input[type=radio][name="${element.name}"]:checked`),
    );
    const seen = new Set<string>();
    const stopping = stops.filter(
      (element) =>
        !(element instanceof HTMLInputElement && element.type === 'radio') || (!seen.has(element.name) && seen.add(element.name)),
    );
    stopping.forEach((element, index) => (element.dataset.stop = String(index)));
    return stopping.length;
  });
  const order: number[] = [];
  for (let press = 0; press < all; press += 1) {
    await page.keyboard.press('Tab');
    order.push(await page.evaluate(() => Number((document.activeElement as HTMLElement).dataset.stop ?? -1)));
  }
  const wrong = order.findIndex((stop, index) => stop !== index);
  if (wrong >= 0) return [`stop ${wrong} of ${all} is ${order[wrong]}, ${await reached(page)}`];
  await page.keyboard.press('Shift+Tab');
  const back = await page.evaluate(() => Number((document.activeElement as HTMLElement).dataset.stop ?? -1));
  return all < 8 ? [`${all} stops`] : back === all - 2 ? [] : [`Shift goes from ${all - 1} to ${back}`];
}
