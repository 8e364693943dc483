// Consent that is over on the edition's day: no file of the edition contains the number, and check reports it.
import assert from 'node:assert/strict';
import { join } from 'node:path';
import { test } from 'vitest';
import { runDesk } from '../setup/built-site.ts';
import { change, contentsOf, openWorkshop } from './workshop.ts';

const { folder, copy, build } = openWorkshop();

test('neither its number nor its address is anywhere in the edition; an office’s number stays', { tags: ['slow'] }, async () => {
  const club = copy('southern');
  change(join(club, 'club.yaml'), 'agreed: 2026-02-01\n    until: 2027-01-31', 'agreed: 2025-02-01\n    until: 2026-03-02');
  const checked = await runDesk('check', ['--content', club]);
  assert.equal(checked.code, 0, checked.output);
  assert.match(
    checked.output,
    /^hint: club\.yaml:\d+:\d+ contact: contacts 2, until: found 2026-03-02, and the edition is of 2026-03-02: the number of "mentor" is shown nowhere; write /m,
  );
  const due = await runDesk('review', ['--content', club, '--on', '2026-03-03']);
  assert.match(due.output, /2026-03-02 {2}1 day past {2}club\.yaml:\d+ {2}contact mentor, until/);
  const out = join(folder, 'over', 'out');
  const ran = await build(club, out);
  assert.equal(ran.code, 0, ran.output);
  const files = contentsOf(out);
  assert.deepEqual(
    [...files].filter(([, text]) => /330-555-0122|3305550122|mentors@example\.org/.test(text)).map(([path]) => path),
    [],
  );
  const page = files.get('who-to-ask/index.html')!;
  assert.match(page, /330-555-0121/);
  assert.match(page, /No consent to show a number holds now\.[\s\S]*Write to the club: /);
});
