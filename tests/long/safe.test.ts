// Every page of the demo club on a host that sends our headers, everything it asks for written down.
import { testSafe } from '../site/safe.ts';

testSafe((site) => site.pages);
