// Some files here are both a command and a function that another command calls. `isEntry(import.meta.url)`
// is true in the file that node was started with, and only there.
import { realpathSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export function isEntry(moduleAddress: string): boolean {
  const started = process.argv[1];
  return started !== undefined && realpathSync(started) === realpathSync(fileURLToPath(moduleAddress));
}
