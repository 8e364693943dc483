// The journeys of a reader in WebKit, as WebKitGTK has it.
import { testEngine } from './test-engine.ts';

testEngine('WebKit');
