/*
 * Finds the engines on this machine. Chromium is the browser of `npm test`. Firefox and WebKitGTK are programs of the system; with
 * ALMANAC_ENGINES=playwright they are Playwright's own builds.
 */
import { existsSync, readdirSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium, firefox, webkit, type BrowserType, type LaunchOptions } from '@playwright/test';
import { findBrowser, launchVariable } from '../../src/cli/browser.ts';
import type { Engine } from './reader.ts';

export const ENGINES = ['Chromium', 'Firefox', 'WebKit'] as const;
export type EngineName = (typeof ENGINES)[number];

/** A way to start it, or the command that installs what is missing. */
export type Found = { start: () => Promise<Engine> } | { install: string };

export const findEngine = (name: EngineName): Found => finders[name]();

const ofPlaywright = process.env.ALMANAC_ENGINES === 'playwright';

const finders: Record<EngineName, () => Found> = {
  Chromium: () => ({
    start: async () => {
      const given = process.env[launchVariable];
      const options = given ? (JSON.parse(given) as LaunchOptions) : await findBrowser();
      if (!options) throw new Error('No Chromium was found: set ALMANAC_BROWSER to one');
      return (await import('./playwright-engine.ts')).startByPlaywright(chromium, options);
    },
  }),
  Firefox: () => {
    if (ofPlaywright) return playwrights(firefox);
    const program = onPath('firefox-esr') ?? onPath('firefox');
    if (!program) return { install: 'apt-get install firefox-esr' };
    return { start: async () => (await import('./bidi-engine.ts')).startFirefox(program) };
  },
  WebKit: () => {
    if (ofPlaywright) return playwrights(webkit);
    const [driver, browser, screen] = [onPath('WebKitWebDriver'), miniBrowser(), onPath('Xvfb')];
    if (!driver || !browser || !screen) return { install: 'apt-get install webkit2gtk-driver xvfb' };
    return { start: async () => (await import('./webdriver-engine.ts')).startWebKit({ driver, browser, screen }) };
  },
};

function playwrights(type: BrowserType): Found {
  if (!existsSync(type.executablePath())) return { install: `npx playwright install ${type.name()}` };
  return { start: async () => (await import('./playwright-engine.ts')).startByPlaywright(type, {}) };
}

function onPath(program: string): string | undefined {
  const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean);
  return folders.map((folder) => join(folder, program)).find((file) => existsSync(file));
}

/** The browser that WebKitWebDriver starts. Its folder has the version of the library in its name. */
function miniBrowser(): string | undefined {
  const places = ['/usr/lib', '/usr/libexec'].filter((folder) => existsSync(folder));
  return places
    .flatMap((place) => [
      place,
      ...readdirSync(place)
        .filter((name) => name.endsWith('-linux-gnu'))
        .map((name) => join(place, name)),
    ])
    .flatMap((place) =>
      readdirSync(place)
        .filter((name) => /^webkit2?gtk-\d/.test(name))
        .map((name) => join(place, name, 'MiniBrowser')),
    )
    .sort()
    .findLast((file) => existsSync(file));
}
