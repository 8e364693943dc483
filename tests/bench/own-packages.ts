/* Packages of a measurement alone. Each has a folder with a lock file of its own, and is installed when it is first needed. */
import { fileURLToPath } from 'node:url';
import { installPackages } from '../../scripts/npm.mjs';
import { whatIsStale } from '../../scripts/stale.mjs';

/** The folder of the packages, installed. */
export async function ownPackages(name: 'eleventy' | 'lighthouse', size: string): Promise<string> {
  const folder = fileURLToPath(new URL(name, import.meta.url));
  if (!whatIsStale(folder)) return folder;
  console.log(`  Installing ${name} (once, and after each update; about ${size}) ...`);
  const failed = await installPackages(folder, process.execPath);
  if (failed) throw new Error(failed);
  return folder;
}
