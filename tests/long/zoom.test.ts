// Every page of the demo club enlarged, with wide letters, and without motion.
import { testZoom } from '../site/zoom.ts';

testZoom((site) => site.pages);
