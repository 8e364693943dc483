// Every page of the demo club with every display option.
import { test } from './fixtures.ts';
import { testForms } from './forms.ts';

test.describe('every page', { tag: '@slow' }, () => testForms((site) => site.pages, true));
