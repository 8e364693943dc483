// Every page of the demo club on a host that sends our headers, everything it asks for written down.
import { test } from './fixtures.ts';
import { testSafe } from './safe.ts';

test.use({ offlineCopy: true });

test.describe('every page', { tag: '@slow' }, () => testSafe((site) => site.pages));
