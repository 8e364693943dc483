// Writes docs/reference.md from the schemas: `node src/cli/reference.ts`.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { referenceText } from './new/reference.ts';
import { projectFolder } from './paths.ts';

writeFileSync(join(projectFolder, 'docs', 'reference.md'), referenceText());
