/* Inputs for each calculator in the tests. */
const eight = 'A:12/300;B:3/300;C:0/250;D:25/310;E:9/300;F:7/300;G:2/280;H:14/300';
const many = Array.from({ length: 24 }, (_, at) => `Hive%20by%20the%20old%20oak%20${at}:${at}/300`).join(';');
/**
 * By calculator: values with a result (of eight colonies where a form has rows of them), values with the longest result, values with an error in each, the beginning of its example's
 * address, and a line of its table.
 */
export const calculators = [
  {
    slug: 'mite-count',
    values: `samples=${eight}&method=wash&phase=dearth`,
    wide: `samples=${many}&recovery=92.9&phase=dearth`,
    faulty: 'samples=A:x/;B:1/0&method=no',
    example: 'samples=A:9/300',
    table: /9\s+3\.0\s+1\.4 to 5\.7\s+Act\s+Act at once/,
  },
  {
    slug: 'count-day',
    values: `counts=${eight}&date=2026-08-15&district=valley&method=wash&phase=dearth`,
    wide: `counts=${many}&date=2026-08-15&district=hill&phase=dearth`,
    faulty: 'counts=A:x/;B:1/0&date=4/5/26&method=no',
    example: 'counts=A:9/300',
    table: /A\s+9\s+300\s+3\.0/,
  },
  {
    slug: 'sampling-plan',
    values: 'share=1&certainty=95&colonies=12',
    wide: 'share=0.01&certainty=99.99&colonies=99999999',
    faulty: 'share=x&certainty=100&colonies=1.5',
    example: 'share=1&certainty=95',
    table: /1 %\s+230\s+299\s+459/,
  },
  {
    slug: 'sticky-board',
    values: 'mites=20&days=5',
    wide: 'mites=999999&days=0.999',
    faulty: 'mites=1,5&days=x',
    example: 'mites=20&days=5',
    table: /20\s+20\s+10\s+6\.67\s+4/,
  },
  {
    slug: 'syrup',
    values: 'sugar-parts=2&water-parts=1&amount=25&unit=lb',
    wide: 'sugar-parts=2&water-parts=1&amount=999999&unit=imp-gal&know=syrup',
    faulty: 'sugar-parts=x&by=eye&unit=gal',
    example: 'sugar-parts=2',
    table: /2 to 1 by weight\s+66\.7 %\s+7\.38 lb/,
  },
  {
    slug: 'package-calendar',
    values: 'installed=2026-04-18',
    wide: 'installed=2026-04-18&queen=candy&comb=foundation',
    faulty: 'installed=4/5/26&queen=x&pounds=1,500',
    example: 'installed=2026-04-18',
    table: /First young bees\s+May\s14 to 24,\s2026/,
  },
  {
    slug: 'package-order',
    values: 'lines=10x3;4x2&allowance=10&cage-lb=1.5&can-lb=3&syrup-l-each=1',
    wide: `lines=${Array.from({ length: 12 }, () => '800x19.99').join(';')}&allowance=100&hours=240&cage-lb=20&can-lb=20&syrup-l-each=20&spare-queens=9999`,
    faulty: 'lines=xx3;0x&allowance=no',
    example: 'lines=10x3;4x2',
    table: /10\s+30 lb \(13\.6 kg\)\s+about 105,000/,
  },
  {
    slug: 'weight-check',
    values: 'rule=us&label-g=454&lot=48&weights-g=451,456,449,455,454,450,457,448,452,455,453,450',
    wide: `rule=eu&label-g=99999&lot=3300&weights-g=${Array.from({ length: 130 }, (_, at) => 90_000 + at * 70.123).join(',')}`,
    faulty: 'rule=uk&label-g=x&weights-g=1,x',
    example: 'rule=us&label-g=454',
    table: /US\S*\s+12\s+0\.0659 oz\s+Passes\s+Fails\s+Fails/,
  },
  {
    slug: 'winter-stores',
    values: 'deep=5&medium=4',
    wide: 'gross-kg=999.99&empty-kg=0.01&target-kg=1000&mix=1kg-630ml',
    faulty: 'deep=x&target-kg=&mix=3:1',
    example: 'deep=5&medium=4',
    table: /20 lb\s+16\.4 to 21\.6 lb\s+2\.22 to 2\.92 US gal/,
  },
  {
    slug: 'brood-dates',
    values: 'caste=queen&seen=egg&date=2026-05-20',
    wide: 'caste=queen&seen=open&date=2026-09-23',
    faulty: 'caste=king&seen=egg&date=4/5/26',
    example: 'caste=queen&seen=sealed',
    table: /worker\s+3\s+8 to 9\S*\s+21/,
  },
  {
    slug: 'treatment-window',
    values: 'start=2026-08-10&lowest-high=18&high=28&place=United%20States&registered=yes',
    wide: 'start=2026-08-10&lowest-high=-10&high=48&mean=20&low=-18&place=The%20United%20States%20of%20America&registered=no&harvest-date=2026-09-30',
    faulty: 'start=x&lowest-high=9&high=warm&supers=half',
    example: 'start=',
    table: /strips between the combs; United States/,
  },
  {
    slug: 'degree-days',
    values: 'days=40/54;43/63&method=simple',
    wide: 'base=50&sum=86',
    faulty: 'days=40-54&base=x&scale=K',
    example: 'days=40/54',
    table: /sine\s+the day as a smooth wave, the part above the base\s+0\.94/,
  },
];
