/* Runs a cli command in another copy of the project, as another user where one is named. */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import type { Ran } from '../setup/built-site.ts';

/** The user and group ids of nobody (Linux and macOS both have them). */
export const NOBODY = 65_534;

export function runAt(project: string, command: string, typed: readonly string[], user?: number): Promise<Ran> {
  const { NODE_ENV: _, ...environment } = process.env;
  const whom = user === undefined ? {} : { uid: user, gid: user };
  const child = spawn(process.execPath, [join(project, 'src', 'cli', `${command}.ts`), ...typed], {
    cwd: project,
    env: { ...environment, HOME: project },
    ...whom,
  });
  let output = '';
  for (const stream of [child.stdout, child.stderr]) stream.setEncoding('utf8').on('data', (text: string) => (output += text));
  return new Promise((resolve, reject) => child.on('error', reject).on('close', (code) => resolve({ code, output })));
}
