// The address of a source is its publisher's, or that of a public archive. Sites that collect copies change them and lose them.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'vitest';

const COPIES = /(?:studylib|docslib|scribd|pdfslide|kipdf|mydokument|slideshare|pdfcoffee|chestofbooks|academia)\./;

test('no source leads to a site that collects copies', () => {
  const files = readdirSync('content', { recursive: true, encoding: 'utf8' }).filter((file) =>
    /[\\/](?:sources|reading)[\\/][^\\/]+\.yaml$/.test(file),
  );
  assert.ok(files.length > 200);
  const found = files.filter((file) => COPIES.test(/^url: .*$/m.exec(readFileSync(join('content', file), 'utf8'))?.[0] ?? ''));
  assert.deepEqual(found, []);
});
