// Every list and calculator in the states that a reader creates, with every display option.
import { test } from './fixtures.ts';
import { calculators } from './calculator-examples.ts';
import { answers, lists, testStates, worked } from './states.ts';

test.describe('every form', { tag: '@slow' }, () =>
  testStates([...lists, ...answers, ...calculators.flatMap(({ slug }) => worked(slug))], ['day', 'night', 'sun']),
);
