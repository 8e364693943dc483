// Every page of the demo club in every form.
import { testForms } from '../site/forms.ts';

testForms((site) => site.pages, true);
