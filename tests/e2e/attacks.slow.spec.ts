// Generated text in addresses, files and boxes is never taken for markup or code: much of it.
import { test } from './fixtures.ts';
import { testAttacks } from './attacks.ts';

test.describe('more attacks', { tag: '@slow' }, () => testAttacks(12));
