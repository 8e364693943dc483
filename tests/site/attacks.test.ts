// Generated text in addresses, files and boxes is never taken for markup or code; the long tests try more of it.
import { testAttacks } from './attacks.ts';

testAttacks(1);
