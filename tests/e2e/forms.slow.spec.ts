// Every page of the demo club in every form.
import { testForms } from './forms.ts';

testForms((site) => site.pages, true);
