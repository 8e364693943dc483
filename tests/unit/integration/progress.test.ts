// The bar on a terminal comes to an end also where the drawing failed: a timer that runs on would keep the command from ending.
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'vitest';
import { setTimeout as wait } from 'node:timers/promises';
import { startProgress } from '../../../src/integration/progress.ts';

for (const sentence of ['Pages drawn: 1.', undefined]) {
  test(
    `pages are counted while they come and go; ended with ${sentence ? 'a' : 'no'} sentence, nothing more is written`,
    { concurrent: true },
    async () => {
      const folder = mkdtempSync(join(tmpdir(), 'progress-'));
      writeFileSync(join(folder, 'index.html'), '');
      let written = '';
      const progress = startProgress(folder, 24, {
        isTTY: true,
        write: (text: string) => (written += text),
      } as unknown as NodeJS.WriteStream);
      await wait(300);
      assert.match(written, /\[#\.{23}\] {2}1 of about 24$/);
      rmSync(folder, { recursive: true });
      await wait(300);
      assert.match(written, / 0 of about 24$/);
      progress.end(sentence);
      assert.ok(written.endsWith(sentence ? `\r${sentence}\n` : '\r'));
      const ended = written.length;
      progress.end();
      await wait(300);
      assert.equal(written.length, ended);
    },
  );
}
