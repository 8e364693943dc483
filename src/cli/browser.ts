// Finds or installs a browser for the tests: the first of a list that really starts. A headless shell comes first because it is about
// twice as fast, then installed browsers, then a download.
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, dirname, join } from 'node:path';
import type { LaunchOptions } from '@playwright/test';

/** The environment variable in which `npm test` passes the launch options to the tests, as JSON. */
export const launchVariable = 'ALMANAC_LAUNCH';

export interface Machine {
  platform: NodeJS.Platform;
  environment: NodeJS.ProcessEnv;
  isRoot: boolean;
  /** True where a browser starts with these options. */
  starts: (options: LaunchOptions) => Promise<boolean>;
  /** Runs a program silently. True where it succeeded. */
  runs: (program: string, parts: string[]) => Promise<boolean>;
  tell: (line: string) => void;
}

/** Options for Playwright's `chromium.launch`, or null where no browser is available. */
export async function findBrowser(machine: Machine = thisMachine()): Promise<LaunchOptions | null> {
  const args = argumentsFor(machine);
  const named = machine.environment.ALMANAC_BROWSER;
  if (named) {
    const options = { executablePath: named, args };
    if (await machine.starts(options)) return options;
    machine.tell(`ALMANAC_BROWSER names ${named}, which does not start.`);
    return null;
  }
  const shell = () => firstThatStarts([{ args }, ...onPath(machine, args, ['chromium-headless-shell'])], machine);
  const found = (await shell()) ?? ((await bringFromSystem(machine)) ? await shell() : null);
  if (found) return found;
  const wholes = ['chromium', 'chromium-browser', 'google-chrome'];
  const whole = [{ channel: 'chrome', args }, { channel: 'msedge', args }, ...onPath(machine, args, wholes)];
  return (await firstThatStarts(whole, machine)) ?? ((await bringFromPlaywright(machine)) ? await shell() : null);
}

async function firstThatStarts(all: LaunchOptions[], machine: Machine): Promise<LaunchOptions | null> {
  for (const options of all) if (await machine.starts(options)) return options;
  return null;
}

// Root needs --no-sandbox. The other options stop the browser's own network requests and HTTP/3.
function argumentsFor({ isRoot }: Machine): string[] {
  const quiet = ['--disable-background-networking', '--disable-component-update', '--disable-sync', '--disable-quic', '--no-first-run'];
  return isRoot ? ['--no-sandbox', ...quiet] : quiet;
}

function onPath({ environment }: Machine, args: string[], names: string[]): LaunchOptions[] {
  const folders = (environment.PATH ?? environment.Path ?? '').split(delimiter).filter(Boolean);
  const files = names.flatMap((name) => folders.map((folder) => join(folder, name)));
  return files.filter((file) => existsSync(file)).map((executablePath) => ({ executablePath, args }));
}

async function bringFromSystem({ platform, isRoot, runs, tell }: Machine): Promise<boolean> {
  if (platform !== 'linux' || !isRoot || !(await runs('apt-get', ['--version']))) return false;
  tell("Installing the system's chromium-headless-shell for the tests (about 60 MB, once) ...");
  // Without a network this fails quickly, and an installed browser is used.
  const soon = ['-qq', '-o', 'Acquire::Retries=0', '-o', 'Acquire::http::Timeout=20'];
  return (await runs('apt-get', [...soon, 'update'])) && (await runs('apt-get', [...soon, '-y', 'install', 'chromium-headless-shell']));
}

async function bringFromPlaywright({ runs, tell }: Machine): Promise<boolean> {
  tell('Downloading a browser for the tests (about 100 MB, once) ...');
  const folder = dirname(createRequire(import.meta.url).resolve('@playwright/test/package.json'));
  return runs(process.execPath, [join(folder, 'cli.js'), 'install', '--only-shell', 'chromium']);
}

function thisMachine(): Machine {
  return {
    platform: process.platform,
    environment: process.env,
    isRoot: process.getuid?.() === 0,
    starts,
    runs,
    tell: (line) => console.error(line),
  };
}

async function starts(options: LaunchOptions): Promise<boolean> {
  const { chromium } = await import('@playwright/test');
  try {
    const browser = await chromium.launch({ ...options, timeout: 30_000 });
    await browser.close();
    return true;
  } catch {
    return false;
  }
}

function runs(program: string, parts: string[]): Promise<boolean> {
  return new Promise((resolve) => {
    const child = spawn(program, parts, {
      stdio: 'ignore',
      signal: AbortSignal.timeout(600_000),
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
    child.on('error', () => resolve(false)).on('close', (code) => resolve(code === 0));
  });
}
