// Detects the entry file. Some files here are both a command and a function for other commands. `isEntry(import.meta.url)` is true only
// in the file that Node was started with.
import { realpathSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export function isEntry(moduleAddress: string): boolean {
  const started = process.argv[1];
  return started !== undefined && realpathSync(started) === realpathSync(fileURLToPath(moduleAddress));
}
