// The pages that stand for all, as a reader with script sees them; looks.slow looks at every page.
import { testLooks } from './looks.ts';
import { oneOfEachKind } from './visit.ts';

testLooks(oneOfEachKind);
