/* Defines the journeys as tests of one engine. An engine that is not installed is skipped by name, with the command that installs it. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, test } from 'vitest';
import { projectFolder } from '../../src/cli/paths.ts';
import { findEngine, type EngineName } from './installed.ts';
import { editionJourneys } from './editions.ts';
import { journeys, type Journey } from './journeys.ts';
import { openWatchedSite, type WatchedSite } from './watched-site.ts';
import type { Engine } from './reader.ts';

declare module 'vitest' {
  interface TaskMeta {
    engine?: EngineName;
    version?: string;
    /** What the table of results says besides. */
    said?: string;
  }
}

/** The page at which the last journey of an engine failed. */
const pictures = join(projectFolder, '.almanac', 'engines');
const options = { tags: ['slow'], timeout: 600_000 };

export function testEngine(name: EngineName): void {
  const found = findEngine(name);
  if ('install' in found) {
    describe(name, () => test(`not run here; to install it: ${found.install}`, options, ({ skip }) => skip(found.install)));
    return;
  }
  describe(name, () => {
    let engine: Engine;
    let site: WatchedSite;
    beforeAll(async () => {
      site = await openWatchedSite();
      engine = await found.start();
    }, 600_000);
    afterAll(async () => {
      await engine?.close();
      await site?.close();
    });
    for (const journey of [...journeys, ...editionJourneys])
      test(journey.name, options, async ({ task, skip }) => {
        Object.assign(task.meta, { engine: name, version: engine.version });
        const said = await take(engine, site, journey);
        if (said === false) skip('the driver cannot print');
        else if (said) task.meta.said = said;
      });
  });
}

async function take(engine: Engine, site: WatchedSite, { take, then, prints }: Journey): Promise<string | void | false> {
  const reader = await engine.open();
  let said: string | void;
  try {
    if (prints && !reader.print) return false;
    said = await take(reader, site);
  } catch (error) {
    mkdirSync(pictures, { recursive: true });
    await reader.shot(join(pictures, `${engine.version}.png`)).catch(() => undefined);
    throw error;
  } finally {
    await reader.close();
  }
  if (!then) return said;
  const other = await engine.open();
  try {
    await then(other, said!);
  } finally {
    await other.close();
  }
}
