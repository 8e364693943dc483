// The journeys of a reader in Firefox.
import { testEngine } from './test-engine.ts';

testEngine('Firefox');
