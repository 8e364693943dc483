/*
 * The one list of calculators, in list order. Each has a page at /work-it-out/<slug>/ where the club has the figures that it `needs`.
 * Two need rows of the club's own land too: lib/rooms says which.
 */
import { spoken } from '../../shared/country/language-here.ts';
import * as en from './calculators.en.ts';
import * as es from './calculators.es.ts';

export type Calculator = {
  readonly slug:
    | 'mite-count'
    | 'count-day'
    | 'sampling-plan'
    | 'sticky-board'
    | 'syrup'
    | 'winter-stores'
    | 'package-calendar'
    | 'package-order'
    | 'weight-check'
    | 'brood-dates'
    | 'treatment-window'
    | 'degree-days';
  readonly title: string;
  readonly lead: string;
  /** Figures without which its page has nothing to say. */
  readonly needs: readonly string[];
};

const PACKAGE_DAYS = [
  'queen-candy-release-days',
  'queen-cage-look-days',
  'eggs-after-release-days',
  'foundation-extra-days',
  'first-look-days',
  'capped-day-worker',
  'worker-days',
];

/** In list order, with the figures that each needs. */
const NEEDS: Readonly<Record<Calculator['slug'], readonly string[]>> = {
  'mite-count': [],
  'count-day': [],
  'sampling-plan': [],
  'sticky-board': [],
  syrup: [],
  'winter-stores': ['winter-stores-target', 'frame-honey-deep', 'feed-efficiency', 'stores-water-share'],
  'package-calendar': PACKAGE_DAYS,
  'package-order': ['bees-per-pound'],
  'weight-check': [],
  'brood-dates': ['worker-days', 'queen-days', 'drone-days', 'capped-day-worker', 'capped-day-queen', 'capped-day-drone'],
  'treatment-window': [],
  'degree-days': [],
};

const tools = () => spoken({ en: en.tools, es: es.tools });

/** Title and lead are asked for when they are shown, because a build says its language later. */
export const calculators: readonly Calculator[] = (Object.keys(NEEDS) as Calculator['slug'][]).map((slug) => ({
  slug,
  needs: NEEDS[slug],
  get title() {
    return tools()[slug].title;
  },
  get lead() {
    return tools()[slug].lead;
  },
}));

export const calculatorNames: readonly string[] = calculators.map(({ slug }) => slug);
