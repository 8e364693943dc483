/* `npm run check`: everything wrong in a content folder, one line a fault. Exit 0 when clean, 1 with faults. */
import { resolve } from 'node:path';
import { check } from '../checks/check.ts';
import { faultLine } from '../reader/fault.ts';
const at = process.argv.indexOf('--content');
const faults = check(resolve(at > 0 ? process.argv[at + 1]! : 'content'));
for (const f of faults) console.log(faultLine(f));
console.log(`${faults.length} faults`);
process.exitCode = faults.length ? 1 : 0;
