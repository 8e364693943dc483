/* Builds the demo club before the tests that read or serve it, so that no test waits for a build within its own timeout. */
import { builtDemo } from './built-site.ts';

export default async function buildDemo(): Promise<void> {
  await builtDemo();
}
