// The pages that stand for all and every ninth page as a reader with script sees it; the long tests look at all.
import { testLooks } from './looks.ts';
import { oneOfEachKind } from './visit.ts';

testLooks((site) => [...new Set([...oneOfEachKind(site), ...site.pages.filter((_, place) => place % 9 === 0)])]);
