// Whom a duty means, how the contact may be reached on a day, and which cautions and calculators a club can show.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { aDay } from '../../days.ts';
import { contactFor, inSentence, reached } from '../../../src/lib/contacts.ts';
import { cautionsFor, ofItsOwn, placed, type Reach } from '../../../src/lib/hazards.ts';
import { askOf, askWithin } from '../../../src/lib/page-context.ts';
import { toolContact, toolOf, toolWork } from '../../../src/lib/tools.ts';
import { calculators } from '../../../src/schemas/calculators.ts';
import { askWithdrawn } from '../../../src/lib/withdrawn.ts';
import { almanacOf, contact } from './almanac.ts';

const clubOf = (...contacts: object[]): any => ({ contacts, districts: [{ id: 'valley' }, { id: 'hill' }] });

for (const [which, districts, chosen] of [
  ['the one for all districts', ['hill', 'valley', undefined], 2],
  ['else that of the main district', ['hill', 'valley'], 1],
  ['else the first', ['hill', 'ridge'], 0],
] as const)
  test(`a duty without a district means ${which}`, () => {
    const contacts = districts.map((district) => contact('inspector', district ? { district } : {}));
    assert.equal(contactFor(clubOf(contact('mentor'), ...contacts), 'inspector'), contacts[chosen]);
  });

test('a duty that nobody has is none', () => {
  assert.equal(contactFor(clubOf(contact('mentor')), 'inspector'), undefined);
  assert.equal(askOf(almanacOf({}), 'inspector'), undefined);
  assert.throws(() => askWithin(almanacOf({}), 'inspector'), /askWithin: needs a contact with the duty inspector/);
});

test('another duty stands in for one that nobody has', () =>
  assert.equal(contactFor({ ...clubOf(contact('mentor')), 'stands-in': { 'swarm-line': 'mentor' } }, 'swarm-line')?.duty, 'mentor'));

const person = contact('mentor', { phone: '+1-555-0100', agreed: aDay('2026-03-02'), until: aDay('2026-08-31'), district: 'hill' });

test('the number of a person is in the page while the consent lasts, and not in the edition of its last day', () => {
  assert.deepEqual(reached(person, '2026-08-30'), { phone: '+1-555-0100', email: undefined, web: undefined, place: 'mentor-hill', consent: '2026-03-02 2026-08-31' }); // prettier-ignore
  assert.deepEqual(reached(person, '2026-08-31'), { place: 'mentor-hill', over: true });
});

test('the number of an office has no consent to end', () =>
  assert.deepEqual(Object.keys(reached({ ...person, 'public-office': true, district: undefined }, '2030-01-01')), ['phone', 'email', 'web', 'place'])); // prettier-ignore

for (const [name, words] of [
  ['County extension office', 'the county extension office'],
  ['The club mentor', 'the club mentor'],
  ['Your doctor', 'your doctor'],
  ['USDA office', 'the USDA office'],
] as const)
  test(`in a sentence “${name}” is “${words}”`, () => assert.equal(inSentence({ name }), words));

for (const [duty, duties, asked] of [
  ['inspector', ['mentor', 'almanac-editor', 'inspector'], 'inspector'],
  ['inspector', ['mentor', 'almanac-editor'], 'almanac-editor'],
  [undefined, ['treasurer', 'mentor'], 'mentor'],
  [undefined, ['treasurer'], 'treasurer'],
] as const)
  test(`of what was withdrawn with ask ${duty} one of ${duties.join(', ')} is asked: ${asked}`, () => {
    const almanac = almanacOf({ club: clubOf(...duties.map((each) => contact(each))) });
    assert.equal(askWithdrawn(almanac, duty).duty, asked);
  });

const caution = (gravity: number): any => ({ gravity, line: 'Mind it.', says: [], heading: 'Caution' });
const cautions = new Map([['allergy', caution(1)], ['stings', caution(3)], ['lifting', caution(3)], ['disease-spread', caution(2)], ['smoke', caution(4)], ['fire', caution(2)]]); // prettier-ignore

test('a page carries every caution that its work calls for, once, the gravest first', () => {
  const hazards = (work?: string[]): string[] => cautionsFor(work, cautions).map(({ hazard }) => hazard);
  assert.deepEqual(hazards(['smoke', 'open-hive', 'lift']), ['allergy', 'disease-spread', 'fire', 'lifting', 'stings', 'smoke']);
  assert.deepEqual(hazards(), []);
  assert.throws(() => hazards(['acid']), /cautionsFor: needs cautions\/acids\.yaml/);
});

for (const [reach, work, full] of [
  // A list shows the gravest of its main work, an article a hazard of its own.
  ['doing', ['open-hive', 'lift'], 'allergy'],
  ['doing', ['smoke', 'open-hive'], 'fire'],
  ['telling', ['open-hive', 'smoke'], undefined],
  ['telling', ['open-hive', 'feed-honey'], 'honey-as-feed'],
] as const satisfies [Reach, string[], string | undefined][])
  test(`${reach} ${work.join(' and ')}: in full stands ${full}, and every other hazard has its line`, () => {
    const all = cautionsFor(work, new Map([...cautions, ['honey-as-feed', caution(5)]]));
    const { full: shown, lines } = placed(all, reach);
    assert.equal(shown?.hazard, full);
    assert.deepEqual([...(shown ? [shown] : []), ...lines].map(({ hazard }) => hazard).sort(), all.map(({ hazard }) => hazard).sort()); // prettier-ignore
  });

test('a calculator has lines only for work that not every opening of a hive brings', () => {
  const all = cautionsFor(['open-hive', 'smoke', 'feed-honey'], new Map([...cautions, ['honey-as-feed', caution(5)]]));
  assert.deepEqual(
    ofItsOwn(all).map(({ hazard }) => hazard),
    ['honey-as-feed'],
  );
});

test('a calculator asks of hands only what the club has the cautions for', () =>
  assert.deepEqual(toolWork(almanacOf({ cautions: Object.fromEntries(cautions) }), ['open-hive', 'acid']), ['open-hive']));

test('a calculator is found by its slug, and whom to ask after it is the first duty that the club has', () => {
  for (const tool of calculators) assert.equal(toolOf(tool.slug), tool);
  assert.equal(toolContact(almanacOf({}), ['inspector', 'mentor'])?.duty, 'mentor');
  assert.equal(toolContact(almanacOf({}), ['inspector']), undefined);
});
