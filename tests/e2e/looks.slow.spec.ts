// Every page of the demo club as a reader with script sees it.
import { test } from './fixtures.ts';
import { testLooks } from './looks.ts';

test.describe('every page', { tag: '@slow' }, () => testLooks((site) => site.pages));
