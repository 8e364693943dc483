// Generated text in addresses, files and boxes is never taken for markup or code: much of it.
import { testAttacks } from './attacks.ts';

testAttacks(12);
