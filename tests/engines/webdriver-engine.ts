/*
 * Driver for WebKitGTK, by the WebDriver program that comes with it. Without a screen it draws on one of its own (Xvfb). The program
 * allows one session at a time, and has no command to print. Its window has no frame, so that it can be as narrow as a phone.
 */
import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { writeFileSync } from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { Builder, By, Capabilities, Key, Origin, type WebDriver } from 'selenium-webdriver';
import { phone, type Engine, type Reader } from './reader.ts';

export interface WebKitPrograms {
  driver: string;
  browser: string;
  /** The program that draws without a screen. */
  screen: string;
}

const KEYS = { Tab: Key.TAB, Enter: Key.ENTER, Space: ' ', PageDown: Key.PAGE_DOWN, Backspace: Key.BACK_SPACE } as const;

export async function startWebKit({ driver: program, browser, screen: drawing }: WebKitPrograms): Promise<Engine> {
  const screen = spawn(drawing, ['-displayfd', '3', '-screen', '0', '1280x900x24', '-nolisten', 'tcp'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  const [display] = (await once(screen.stdio[3]!, 'data')) as [Buffer];
  const port = await freePort();
  const server = spawn(program, [`--port=${port}`, '--replace-on-new-session'], {
    env: { ...process.env, DISPLAY: `:${String(display).trim()}`, LIBGL_ALWAYS_SOFTWARE: '1' },
    stdio: 'ignore',
  });
  const address = `http://127.0.0.1:${port}`;
  await answering(`${address}/status`, server);
  const session = async (): Promise<WebDriver> => {
    const wanted = new Capabilities({
      browserName: 'MiniBrowser',
      'webkitgtk:browserOptions': { binary: browser, args: ['--automation', '--full-screen'] },
      unhandledPromptBehavior: 'accept',
    });
    const driver = await new Builder().disableEnvironmentOverrides().usingServer(address).withCapabilities(wanted).build();
    await driver.getSession();
    return driver;
  };
  const first = await session();
  const version = (await first.getCapabilities()).getBrowserVersion() ?? '';
  await first.quit();
  return {
    version,
    open: async () => readerOf(await session()),
    close: async () => {
      for (const child of [server, screen]) {
        const gone = once(child, 'exit');
        child.kill();
        await gone;
      }
    },
  };
}

async function readerOf(driver: WebDriver): Promise<Reader> {
  const run: Reader['run'] = (inPage, ...given) => driver.executeScript(`return (${String(inPage)})(...arguments)`, ...given);
  const resize = async (width: number, height: number): Promise<number> => {
    await driver.manage().window().setRect({ x: 0, y: 0, width, height });
    return driver.executeScript('return innerWidth');
  };
  await resize(phone.width, phone.height);
  return {
    go: (address) => driver.get(address),
    run,
    press: async (selector) => {
      const element = await driver.findElement(By.css(selector));
      await driver.executeScript('arguments[0].scrollIntoView({ block: "center", behavior: "instant" })', element);
      await driver
        .actions()
        .move({ origin: element as unknown as Origin, x: 0, y: 0 })
        .click()
        .perform();
    },
    type: async (text) => void (await driver.actions().sendKeys(text).perform()),
    key: async (name) => void (await driver.actions().sendKeys(KEYS[name]).perform()),
    resize,
    reload: () => driver.navigate().refresh(),
    shot: async (file) => writeFileSync(file, await driver.takeScreenshot(), 'base64'),
    close: () => driver.quit(),
  };
}

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  server.close();
  await once(server, 'close');
  return port;
}

async function answering(address: string, program: ChildProcess): Promise<void> {
  for (;;) {
    if (program.exitCode !== null) throw new Error('WebKitWebDriver ended before it answered');
    const is = await fetch(address).then(
      ({ ok }) => ok,
      () => false,
    );
    if (is) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}
