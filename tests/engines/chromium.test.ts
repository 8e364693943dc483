// The journeys of a reader in Chromium.
import { testEngine } from './test-engine.ts';

testEngine('Chromium');
