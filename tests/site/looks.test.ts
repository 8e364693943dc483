// A page of each kind and every sixth page as a reader with script sees it; the long tests look at all.
import { testLooks } from './looks.ts';
import { oneOfEachKind } from './visit.ts';

testLooks((site) => [...new Set([...oneOfEachKind(site), ...site.pages.filter((_, place) => place % 6 === 0)])]);
