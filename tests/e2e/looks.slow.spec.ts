// Every page of the demo club as a reader with script sees it.
import { testLooks } from './looks.ts';

testLooks((site) => site.pages);
