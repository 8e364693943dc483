// Every page of the demo club enlarged, with wide text spacing, and without motion.
import { test } from './fixtures.ts';
import { testZoom } from './zoom.ts';

test.describe('every page', { tag: '@slow' }, () => testZoom((site) => site.pages));
