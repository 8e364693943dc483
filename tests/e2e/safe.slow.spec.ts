// Every page of the demo club on a host with our headers, with every request recorded.
import { test } from './fixtures.ts';
import { testSafe } from './safe.ts';

test.use({ offlineCopy: true });

test.describe('every page', { tag: '@slow' }, () => testSafe((site) => site.pages));
