/* Driver for the browsers that Playwright starts: Chromium, and its own Firefox and WebKit where they are installed. */
import type { BrowserType, LaunchOptions } from '@playwright/test';
import { phone, type Engine, type Reader } from './reader.ts';

export async function startByPlaywright(type: BrowserType, options: LaunchOptions): Promise<Engine> {
  const browser = await type.launch(options);
  const open = async (): Promise<Reader> => {
    const context = await browser.newContext({ viewport: phone });
    const page = await context.newPage();
    page.on('dialog', (dialog) => void dialog.accept());
    return {
      go: async (address) => void (await page.goto(address)),
      run: (inPage, ...given) => page.evaluate(`(${String(inPage)})(...${JSON.stringify(given)})`),
      press: (selector) => page.locator(selector).first().click(),
      type: (text) => page.keyboard.type(text),
      key: (name) => page.keyboard.press(name),
      resize: async (width, height) => {
        await page.setViewportSize({ width, height });
        return page.evaluate(() => innerWidth);
      },
      reload: async () => void (await page.reload()),
      ...(type.name() === 'chromium' ? { print: () => page.pdf({ format: 'A4' }) } : {}),
      shot: async (file) => void (await page.screenshot({ path: file, fullPage: true })),
      close: () => context.close(),
    };
  };
  return { version: browser.version(), open, close: () => browser.close() };
}
