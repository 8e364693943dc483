// Every page of the demo club in every form.
import { test } from './fixtures.ts';
import { testForms } from './forms.ts';

test.describe('every page', { tag: '@slow' }, () => testForms((site) => site.pages, true));
