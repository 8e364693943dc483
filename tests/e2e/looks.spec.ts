// The sample pages with script. looks.slow tests every page.
import { testLooks } from './looks.ts';
import { oneOfEachKind } from './visit.ts';

testLooks(oneOfEachKind);
