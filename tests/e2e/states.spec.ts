// Lists, answers and two calculators in the states a reader brings them into; the long tests take all, in every light.
import { answers, lists, testStates, worked } from './states.ts';

testStates([...lists, ...answers, ...worked('mite-count'), ...worked('package-order')], ['day', 'night']);
