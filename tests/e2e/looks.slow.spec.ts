// Every page of the demo club with script.
import { test } from './fixtures.ts';
import { testLooks } from './looks.ts';

test.describe('every page', { tag: '@slow' }, () => testLooks((site) => site.pages));
