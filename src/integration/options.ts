/*
 * Build options without an Astro flag. They are environment variables, so that `npx astro build` accepts them too:
 * ALMANAC_CONTENT=../my-club npx astro build. The commands of src/cli set the same variables.
 */
import { resolve } from 'node:path';
import { isDay, type Day } from '../../shared/days/day.ts';

export type AlmanacOptions = {
  /** The club's folder. */
  content: string;
  /** The edition's day. The default is the newest day in the content. */
  edition?: Day | undefined;
  /** The folder of the edition that the new one replaces, for the report. The default is the output folder. */
  replaces?: string | undefined;
  /** The folder of the texts of the last good edition, for suggestions where a page was renamed. */
  published?: string | undefined;
  /** Only faults are printed. */
  quiet?: boolean | undefined;
};

const VARIABLES = {
  content: 'ALMANAC_CONTENT',
  edition: 'ALMANAC_EDITION',
  replaces: 'ALMANAC_REPLACES',
  published: 'ALMANAC_PUBLISHED',
  quiet: 'ALMANAC_QUIET',
} as const;

/** A relative path is relative to `root`. */
export function optionsIn(environment: NodeJS.ProcessEnv, root: string): AlmanacOptions {
  const valueOf = (name: keyof typeof VARIABLES): string | undefined => environment[VARIABLES[name]] || undefined;
  return {
    content: resolve(root, valueOf('content') ?? 'content/demo-club'),
    edition: dayIn(valueOf('edition')),
    replaces: valueOf('replaces'),
    published: valueOf('published'),
    quiet: valueOf('quiet') !== undefined,
  };
}

function dayIn(text: string | undefined): Day | undefined {
  if (text === undefined || isDay(text)) return text;
  throw new Error(`${VARIABLES.edition} takes a day written as 2026-05-01, not ${text}.`);
}

/** Sets the variables for Astro, which runs in this process. A missing option is unset. */
export function setOptions(environment: NodeJS.ProcessEnv, options: AlmanacOptions): void {
  for (const [name, variable] of Object.entries(VARIABLES) as [keyof typeof VARIABLES, string][]) {
    const value = options[name];
    if (value === undefined || value === false) delete environment[variable];
    else environment[variable] = value === true ? '1' : value;
  }
}
