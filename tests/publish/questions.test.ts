// What members type, over the index of the demonstration almanac: a page that answers is among the first three.
import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { before, test } from 'node:test';
import { openIndex, type Engine } from '../../src/islands/search/engine.ts';
import { lookUp } from '../../src/islands/search/look-up.ts';
import { projectFolder } from '../../src/desk/places.ts';
import { builtDemo } from '../site/built-site.ts';
import { known, last } from '../tables/more-questions.ts';
import { plainWords } from '../tables/plain-words.ts';
import { questions } from '../tables/questions.ts';

let engine: Engine;
before(async () => {
  const { read } = await builtDemo();
  engine = await openIndex((path) => Promise.resolve(JSON.parse(read(path)) as unknown));
});

const places = async (typed: string): Promise<string[]> => (await lookUp(typed, engine)).hits.map(({ entry }) => entry.place);
const pageOf = (place: string): string => place.replace(/#.*/, '');

for (const [name, table] of Object.entries({
  'the listed questions': questions,
  'further ones': known,
  'further ones, written when the ranking stood': last,
})) {
  test(`${name}: 95 in 100 find an answer among the first three`, async (context) => {
    const missed: string[] = [];
    for (const { typed, pages } of table) {
      const top = (await places(typed)).slice(0, 3).map(pageOf);
      if (!top.some((place) => pages.includes(place))) missed.push(`"${typed}" finds ${top.join(', ') || 'nothing'}`);
    }
    context.diagnostic(`${table.length - missed.length} of ${table.length}`);
    for (const miss of missed) context.diagnostic(miss);
    assert.ok(
      table.length >= 60 && missed.length <= table.length * 0.05,
      `${missed.length} of ${table.length} not answered:\n${missed.join('\n')}`,
    );
  });
}

test('every plain word, misspelling and abbreviation leads to its word, or to the page that says more of it', async () => {
  const lost: string[] = [];
  for (const [id, typed] of Object.entries(plainWords)) {
    const { leads } = engine.named.find((word) => word.id === id)!;
    const right = [`words/#${id}`, engine.entries[leads]?.place];
    for (const one of typed.split(', '))
      if (!(await places(one)).slice(0, 3).some((place) => right.includes(place)))
        lost.push(`${one}: ${(await places(one)).slice(0, 3).join(', ')}`);
  }
  assert.deepEqual(lost, []);
});

test('every way of typing a word in the word list finds its word or its page among the first five', async () => {
  const lost: string[] = [];
  for (const { id, names, leads } of engine.named) {
    for (const name of names)
      if (!(await places(name)).slice(0, 5).some((place) => place === `words/#${id}` || place === engine.entries[leads]?.place))
        lost.push(`${name} (${id})`);
  }
  assert.deepEqual(lost, []);
});

test('who asks what a word means gets its entry first', async () => {
  for (const word of ['propolis', 'supersedure', 'dearth', 'nurse bees'])
    assert.equal(pageOf((await places(`what is ${word}`))[0]!), 'words/', word);
});

const DOES: Record<string, string> = {
  'mite-count': 'how many mites per 100 bees',
  'sampling-plan': 'how many hives should I sample',
  'sticky-board': 'mites on the board per day',
  syrup: 'how much sugar for a gallon',
  'winter-stores': 'how much to feed before winter',
  'package-calendar': 'what happens when after package goes in',
  'package-order': 'how many packages for a group order',
  'weight-check': 'check the net weight of jars',
  'brood-dates': 'when will the brood emerge',
  'treatment-window': 'which treatments does the weather rule out',
  'degree-days': 'add up warmth until bloom',
  'package-arrival': 'put the bees into the hive',
  'package-day-before': 'what must stand ready before bees come',
  'package-first-six-weeks': 'after installing a package when to feed and look',
  'package-order ': 'what to ask when ordering bees',
  'winter-rest': 'visit hive in winter',
  'fall-feeding': 'weigh and feed before it turns cold',
  'build-up-inspection': 'first look in spring',
  'swarm-season': 'weekly look for queen cells',
  'after-moving-the-queen': 'a week after a split take down the new queen cells',
  'broodless-weeks': 'treat mites in december without brood',
  'swarm-call': 'take a swarm when somebody calls',
  'flow-and-supers': 'put honey boxes on',
  'late-summer-mites': 'decide about mites in late summer',
  'mite-count-day': 'wash bees and count mites',
  'disease-suspected': 'I suspect a disease what do I do',
  'moving-a-hive': 'carry a hive to another place',
};

test('calculators and checklists are found by what they do, every one of them', async () => {
  const all = ['checklists']
    .flatMap((folder) => readdirSync(join(projectFolder, 'content', folder)).map((file) => file.replace('.mdx', '')))
    .concat(
      engine.entries.filter(({ kind, place }) => kind === 'calculator' && pageOf(place) === place).map(({ place }) => place.split('/')[1]!),
    );
  assert.deepEqual(
    [...new Set(all)].filter((id) => !(id in DOES)),
    [],
  );
  const lost: string[] = [];
  for (const [id, typed] of Object.entries(DOES)) {
    const top = (await places(typed)).slice(0, 3);
    if (!top.some((place) => place === `work-it-out/${id}/` || place === `lists/${id.trim()}/`))
      lost.push(`${id}: "${typed}" finds ${top.join(', ')}`);
  }
  assert.deepEqual(lost, []);
});
