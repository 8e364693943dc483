// Every page of the demo club enlarged, with wide letters, and without motion.
import { testZoom } from './zoom.ts';

testZoom((site) => site.pages);
