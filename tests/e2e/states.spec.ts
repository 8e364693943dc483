// Lists, results and two calculators in the states that a reader creates. states.slow tests all, with every display option.
import { answers, lists, testStates, worked } from './states.ts';

testStates([...lists, ...answers, ...worked('mite-count'), ...worked('package-order')], ['day', 'night']);
