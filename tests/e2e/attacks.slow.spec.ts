// Generated text in addresses, files and form fields is never treated as markup or code: a long run.
import { test } from './fixtures.ts';
import { testAttacks } from './attacks.ts';

test.describe('more attacks', { tag: '@slow' }, () => testAttacks(12));
