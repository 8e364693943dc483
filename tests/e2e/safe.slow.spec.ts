// Every page of the demo club on a host that sends our headers, everything it asks for written down.
import { testSafe } from './safe.ts';

testSafe((site) => site.pages);
