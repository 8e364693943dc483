/* Driver for an installed Firefox, over WebDriver BiDi (W3C), which Firefox itself speaks. */
import puppeteer from 'puppeteer-core';
import { phone, until, type Engine, type Reader } from './reader.ts';

export async function startFirefox(program: string): Promise<Engine> {
  const browser = await puppeteer.launch({ browser: 'firefox', executablePath: program, headless: true });
  const open = async (): Promise<Reader> => {
    const context = await browser.createBrowserContext();
    const page = await context.newPage();
    page.on('dialog', (dialog) => void dialog.accept());
    await page.setViewport(phone);
    const reader: Reader = {
      // After Back to a page that the browser kept whole, Puppeteer's own navigation never ends. So the page itself leaves.
      go: async (address) => {
        if (page.url() === 'about:blank') return void (await page.goto(address));
        const left = await page.evaluate((address) => {
          setTimeout(() => location.assign(address));
          return performance.timeOrigin;
        }, address);
        // Between two pages the tab holds an empty one.
        const hasLoaded = (left: number): boolean =>
          document.readyState === 'complete' && performance.timeOrigin !== left && location.protocol !== 'about:';
        await until(reader, `${address} has loaded`, hasLoaded, left);
      },
      run: (inPage, ...given) => page.evaluate(`(${String(inPage)})(...${JSON.stringify(given)})`) as never,
      press: async (selector) => {
        // A browser may scroll once more to the box that was just typed in, so the element is pressed where it stays for two frames.
        const { x, y } = await page.evaluate(async (selector) => {
          const place = (): { x: number; y: number } => {
            const { left, top, width, height } = document.querySelector(selector)!.getBoundingClientRect();
            return { x: left + width / 2, y: top + height / 2 };
          };
          for (;;) {
            document.querySelector(selector)!.scrollIntoView({ block: 'center', behavior: 'instant' });
            const { x, y } = place();
            for (let frame = 0; frame < 2; frame += 1) await new Promise(requestAnimationFrame);
            const now = place();
            if (now.x === x && now.y === y) return now;
          }
        }, selector);
        await page.mouse.click(x, y);
      },
      type: (text) => page.keyboard.type(text),
      key: (name) => page.keyboard.press(name === 'Space' ? ' ' : name),
      resize: async (width, height) => {
        await page.setViewport({ width, height });
        return page.evaluate(() => innerWidth);
      },
      reload: async () => void (await page.reload()),
      print: async () => Buffer.from(await page.pdf({ format: 'A4' })),
      shot: async (file) => void (await page.screenshot({ path: file as `${string}.png`, fullPage: true })),
      close: () => context.close(),
    };
    return reader;
  };
  return { version: (await browser.version()).replace('firefox/', ''), open, close: () => browser.close() };
}
