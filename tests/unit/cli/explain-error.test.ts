// System errors become one sentence that says what to do. Codes: POSIX.1-2017, <errno.h>.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { explainError } from '../../../src/cli/explain-error.ts';

const thrown = (code: string, more: object = {}): Error =>
  Object.assign(new Error(`${code}: some words, open '/a/b'`), { code, path: '/a/b', ...more });

const rows: [case_: string, given: unknown, expect: string][] = [
  ['no room', thrown('ENOSPC'), 'the disk is full. Make room and build again.'],
  ['a quota', thrown('EDQUOT'), 'the disk is full. Make room and build again.'],
  [
    'no room, in words alone',
    new Error('failed to write: No space left on device (os error 28)'),
    'the disk is full. Make room and build again.',
  ],
  ['a file too large', thrown('EFBIG'), '/a/b is larger than this system allows. Write to another disk.'],
  ['not allowed', thrown('EACCES'), '/a/b may not be read or written by you. Change its permissions, or write another folder.'],
  [
    'not allowed, code in the words',
    new Error("EACCES: permission denied, mkdir '/c'"),
    '/c may not be read or written by you. Change its permissions, or write another folder.',
  ],
  ['a disk that is only read', thrown('EROFS'), '/a/b may not be read or written by you. Change its permissions, or write another folder.'],
  ['below a file', thrown('ENOTDIR'), '/a/b is a file, or lies in one, where a folder must be. Write another folder.'],
  ['a name too long', thrown('ENAMETOOLONG'), '/a/b is too long a name for this disk. Write a shorter one.'],
  ['gone meanwhile', thrown('ENOENT'), '/a/b was taken away while the site was built. Build again.'],
  [
    'a disk of its own',
    thrown('EBUSY', { dest: '/a/b.old-1' }),
    '/a/b is in use, or a disk of its own. Close what uses it, or write a folder inside it.',
  ],
  ['too many files', thrown('EMFILE'), 'too many files are open on this machine. Close other programs and build again.'],
  [
    'a sentence of ours',
    new Error('content/a.mdx changed while the site was built. Run it again.'),
    'content/a.mdx changed while the site was built. Run it again.',
  ],
  ['the bundler', new Error('Build failed with 1 error:\n\n\u001b[31m[X] a thing\u001b[0m\n    at /x.ts:1:1'), '[X] a thing.'],
  ['only words', 'odd', 'odd.'],
  ['nothing', undefined, 'something went wrong.'],
];

test('every cause has its sentence', () => {
  for (const [name, given, expect] of rows) assert.equal(explainError(given), expect, name);
});
