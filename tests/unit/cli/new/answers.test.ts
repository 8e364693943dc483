// The answers of `new -- club`: a file with every mistake at once, and a dialogue in two streams that stand for a terminal.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { PassThrough } from 'node:stream';
import { test } from 'vitest';
import { unwrap } from '../../../../shared/result.ts';
import { answersFrom, ask } from '../../../../src/cli/new/answers.ts';
import { kilometres } from '../../../../src/cli/new/land.ts';
import { QUESTIONS, type Given } from '../../../../src/cli/new/questions.ts';
import { formatDiagnostic } from '../../../../src/source/diagnostic.ts';
import { near } from '../../../near.ts';
import { answersFile, asked, newClubs } from '../../../fixtures/new-club.ts';

const waikato = readFileSync(answersFile('waikato'), 'utf8');

/** The sentences for a file with these lines in place of others. */
function faultsOf(text: string, given: Given = {}): string[] {
  const read = answersFrom('answers.yaml', Buffer.from(text), given, asked);
  return read.ok ? [] : read.reason.map(formatDiagnostic);
}

const changed = (lines: Readonly<Record<string, string>>): string =>
  Object.entries(lines).reduce((text, [key, value]) => {
    const line = new RegExp(`^${key}:.*$`, 'm');
    return line.test(text) ? text.replace(line, `${key}: ${value}`) : `${text}${key}: ${value}\n`;
  }, waikato);

for (const name of newClubs)
  test(`the answers of ${name} are right`, () => assert.deepEqual(faultsOf(readFileSync(answersFile(name), 'utf8')), []));

test('what the books offer is taken where the file says nothing, and lines to ring are not', () => {
  const answers = unwrap(answersFrom('answers.yaml', Buffer.from(waikato), {}, asked));
  assert.deepEqual(
    [
      answers.language,
      answers.words,
      answers.units,
      answers.hemisphere,
      answers.climate,
      answers['contact-duty'],
      answers['meeting-title'],
    ],
    ['en-NZ', 'uk', 'metric', 'south', 'parts of the year', 'mentor', 'Club meeting'],
  );
  assert.deepEqual(faultsOf(waikato.replace(/^(?:emergency|poison|contact-agreed):.*\n/gm, '')), [
    'answers.yaml:1:1 answer: contact-agreed: found no such line; write "contact-agreed:" and the answer to: On which day did the person behind it agree in writing to be shown? It is shown for a year from that day.',
    'answers.yaml:1:1 answer: emergency: found no such line; write "emergency:" and the answer to: The book of your country has 111: Emergency number. Is that the number for someone who is unwell? yes, or own for another.',
    'answers.yaml:1:1 answer: poison: found no such line; write "poison:" and the answer to: The book of your country has 0800 764 766: National Poisons Centre. Is that the line for poisons? yes, or none.',
  ]);
});

/** A wrong answer, and what is said of it behind "answer: ". */
const WRONG: readonly [key: string, answer: string, sentence: string][] = [
  ['name', '"!"', 'name: found "!"; write the name of the club, with some of a to z or 0 to 9'],
  ['name', 'An invented club', 'name: found "An invented club"; write what is true: a real club publishes nothing invented'],
  ['land', 'New Zealand', 'land: found "New Zealand"; write NZ, the code of New Zealand in ISO 3166'],
  ['land', 'Aotearoa', 'land: found "Aotearoa"; write a code of ISO 3166 in capitals, such as NZ or US-OH'],
  ['land', 'UK', 'land: found "UK"; write GB, the code of the United Kingdom in ISO 3166'],
  ['land', 'XX', 'land: found "XX"; write a code of ISO 3166 in capitals, such as NZ or US-OH'],
  ['place', '', 'place: found a blank; write the county or region, such as "Waikato, New Zealand"'],
  ['site', 'bees.fern-flat.nz', 'site: found "bees.fern-flat.nz"; write a whole address, such as https://bees.our-club.org/'],
  ['mistakes', 'almanac at fern-flat', 'mistakes: found "almanac at fern-flat"; write a mail address, such as almanac@our-club.org'],
  ['mistakes', 'almanac@example.org', 'mistakes: found "almanac@example.org"; write a real one: this is reserved for examples'],
  ['time-zone', 'NZST time', 'time-zone: found "NZST time"; write a time zone of the IANA list, such as America/New_York'],
  [
    'language',
    'English',
    'language: found "English"; write one of: en-US, en-GB, en-AU, en-NZ, en-CA, en-IE, en-ZA, es, es-ES, es-US, es-MX, es-AR, es-CL',
  ],
  ['words', 'nz', 'words: found "nz"; write one of: us, uk'],
  ['units', 'kg', 'units: found "kg"; write one of: us, metric'],
  ['emergency', '112', 'emergency: found "112"; write one of: yes, own'],
  ['poison', 'nune', 'poison: found "nune"; write none'],
  ['inspector', '"-"', 'inspector: found "-"; write the name of the office, such as "Apiary inspection office"'],
  [
    'inspector-reach',
    'ring the council',
    'inspector-reach: found "ring the council"; write a telephone number, a mail address, such as almanac@our-club.org, or a whole web address',
  ],
  [
    'inspector-reach',
    '080',
    'inspector-reach: found "080"; write a telephone number: at least 5 digits, with spaces, hyphens and brackets between them if you like',
  ],
  ['inspector-reach', '330-555-0142', 'inspector-reach: found "330-555-0142"; write a real one: this is reserved for examples'],
  [
    'contact-duty',
    'Swarm line',
    'contact-duty: found "Swarm line"; write one word for the duty, or more joined by hyphens, such as swarm-line',
  ],
  ['contact-duty', 'inspector', 'contact-duty: found "inspector"; write another duty, such as mentor: the club has that one already'],
  ['contact-agreed', '2026-02-30', 'contact-agreed: found "2026-02-30"; write a day that exists, such as 2027-02-28'],
  ['contact-agreed', '2026-12-01', 'contact-agreed: found "2026-12-01", which is to come; write the day on which they agreed'],
  [
    'contact-agreed',
    '2025-11-29',
    'contact-agreed: found "2025-11-29", and consent for a year from then is over; write a day of the last twelve months: ask them again',
  ],
  ['meeting-day', '2026-11-28', 'meeting-day: found "2026-11-28", which is past; write a day to come'],
  ['meeting-day', 'soon', 'meeting-day: found "soon"; write a day such as 2027-01-12 or 12 January 2027'],
  ['meeting-hours', '19:00', 'meeting-hours: found "19:00"; write both times, such as 19:00 to 21:00, or nothing for a whole day'],
  ['meeting-hours', '9 pm to 7 pm', 'meeting-hours: found "9 pm to 7 pm", which ends before it begins; write a later time to finish'],
  ['climate', 'hamilton', 'climate: found "hamilton"; write one of: parts of the year, own'],
  ['town', '-37.8, 175.3', 'town: found "-37.8, 175.3", which is not asked after these answers; write nothing: take the line out'],
  ['hemisphere', 'north', 'hemisphere: found "north", which is not asked after these answers; write nothing: take the line out'],
  ['nmae', 'Fern Flat', 'nmae: found "nmae", which is no question; write "name"'],
];
for (const [key, answer, sentence] of WRONG)
  test(`${key}: ${answer || 'a blank'}`, () => {
    const text = changed({ [key]: answer });
    const line = text.split('\n').findIndex((each) => each.startsWith(`${key}:`)) + 1;
    const [first = '', ...more] = faultsOf(text);
    assert.match(first, new RegExp(`^answers\\.yaml:${line}:\\d+ answer: `));
    assert.deepEqual([first.replace(/^\S+ answer: /, ''), ...more], [sentence]);
  });

test('normals that are typed have sentences too', () => {
  const own = {
    climate: 'own',
    'climate-scale': 'K',
    'climate-lows': '1 2 3',
    'climate-highs': '[25, 25, 24, 21, 17, 14, 14, 15, 17, 20, 22, 24]',
    'climate-latitude': '37.8',
    'climate-years': '1991-2020',
    'climate-published-by': 'The weather service',
  };
  assert.deepEqual(
    faultsOf(changed(own)).map((said) => said.replace(/^\S+ answer: /, '')),
    [
      'climate-published-at: found no such line; write "climate-published-at:" and the answer to: At which address, or in which report?',
      'climate-scale: found "K"; write one of: F, C',
      'climate-lows: found 3 of them: "1 2 3"; write twelve numbers, from January to December',
      'climate-latitude: found "37.8"; write it with a minus, since the club lies south of the equator',
    ],
  );
});

test('a high under its low is named with its month', () => {
  const devon = readFileSync(answersFile('devon'), 'utf8').replace('climate-lows: 1.7', 'climate-lows: 9');
  assert.deepEqual(
    faultsOf(devon).map((said) => said.replace(/^\S+ answer: /, '')),
    ['climate-highs: found 7.2 for January, under its low of 9; write a daily high that is over the daily low'],
  );
});

test('every wrong answer is named at once, in the order of the file', () => {
  const faults = faultsOf(changed({ mistakes: 'nobody', 'meeting-day': 'soon', land: 'UK' }));
  assert.deepEqual(
    faults.map((said) => said.replace(/^\S+ answer: (\S+):.*$/, '$1')),
    ['land', 'mistakes', 'meeting-day'],
  );
});

test('a file that is no list of answers', () => {
  assert.deepEqual(faultsOf('- NZ-WKO\n'), [
    'answers.yaml:1:1 answer: the file: found no lines "key: answer"; write an answer a line, such as "land: NZ-WKO"',
  ]);
  assert.deepEqual(faultsOf(changed({ inspector: '\n  name: Office' })), [
    `answers.yaml:${waikato.split('\n').findIndex((line) => line.startsWith('inspector:')) + 2}:3 answer: inspector: found indented lines; write one answer on the line`,
  ]);
  assert.match(faultsOf('name: Fern Flat\nname: Fern\n')[0]!, /^answers\.yaml:2:1 fields: /);
});

test('the land of the command line, and another one in the file', () => {
  assert.deepEqual(faultsOf(waikato, { land: 'NZ-WKO' }), []);
  assert.deepEqual(
    faultsOf(waikato, { land: 'NZ-OTA' }).map((said) => said.replace(/^\S+ /, '')),
    ['answer: land: found "NZ-WKO", while --land says NZ-OTA; write NZ-OTA, or another --land'],
  );
});

/** Types each line once its prompt is shown. `end` is typed last. */
async function dialogue(
  lines: readonly string[],
  given: Given = {},
  end: 'ends' | 'Ctrl-C' = 'ends',
): Promise<{ answers: Given | null; shown: string }> {
  const [input, output] = [new PassThrough(), new PassThrough()];
  if (end === 'Ctrl-C') Object.assign(output, { isTTY: true, columns: 200 });
  let shown = '';
  let next = 0;
  output.setEncoding('utf8').on('data', (text: string) => {
    shown += text;
    if (!text.endsWith('> ')) return;
    if (next < lines.length) input.write(`${lines[next++]}\n`);
    else if (end === 'Ctrl-C') input.write('\x03');
    else input.end();
  });
  return { answers: await ask(input, output, given, { today: asked.today, zone: 'Pacific/Auckland' }), shown };
}

const WAIKATO_TYPED = [
  'Fern Flat Bee Club',
  'nz-wko',
  'Fern Flat, Waikato',
  'almanac@fern-flat.invalid',
  'yes',
  'yes',
  'Foulbrood management agency',
  'foulbrood@fern-flat.invalid',
  'Mentors of Fern Flat',
  'mentors@fern-flat.invalid',
  '2 November 2026',
  '2027-02-09',
  '',
  'Fern Flat Hall',
];

test('a dialogue gives the answers of the file; Enter takes what is proposed', async () => {
  const { answers, shown } = await dialogue(WAIKATO_TYPED);
  assert.deepEqual(answers, { ...unwrap(answersFrom('answers.yaml', Buffer.from(waikato), {}, asked)), site: '' });
  assert.match(shown, /^1 {2}What is the club called\?$/m);
  assert.match(shown, /^\[Mentors of the club\] > /m);
  assert.match(shown, /^8 of 8 {2}In which hall or yard\?$/m);
  assert.match(
    shown,
    /^Taken without a question: time-zone Pacific\/Auckland, language en-NZ, words uk, units metric, contact-duty mentor, /m,
  );
  const asksOften = shown.split('> ').length - 1;
  assert.equal(asksOften, WAIKATO_TYPED.length);
});

test('a wrong answer is asked for again, with what to write', async () => {
  const lines = [...WAIKATO_TYPED];
  lines.splice(1, 0, 'UK', 'Aotearoa');
  const { answers, shown } = await dialogue(lines);
  assert.equal(answers?.land, 'NZ-WKO');
  assert.match(shown, /Found "UK"; write GB, the code of the United Kingdom in ISO 3166\.$/m);
  assert.match(shown, /Found "Aotearoa"; write a code of ISO 3166 in capitals, such as NZ or US-OH\.$/m);
});

test('a question without a proposed answer does not take Enter', async () => {
  const { shown } = await dialogue(['', 'Fern Flat Bee Club']);
  assert.match(shown, /Found a blank; write the name of the club, with some of a to z or 0 to 9\.$/m);
});

test('input that ends early, and Ctrl-C, give no answers', async () => {
  assert.equal((await dialogue(WAIKATO_TYPED.slice(0, -1))).answers, null);
  assert.equal((await dialogue([])).answers, null);
  assert.equal((await dialogue(WAIKATO_TYPED.slice(0, 5), {}, 'Ctrl-C')).answers, null);
});

test('the nearest station is proposed within 150 km, and the parts of the year beyond', async () => {
  const climate = QUESTIONS.find(({ key }) => key === 'climate')!;
  const at = (town: string): Given => ({ land: 'US-OH', hemisphere: 'north', town });
  const proposed = (town: string) => climate.propose!(at(town), asked);
  assert.deepEqual([proposed('40.8, -82.5'), proposed('38.2, -85.7'), proposed('')], ['wooster', 'parts of the year', 'parts of the year']);
  assert.match(climate.ask(at('40.8, -82.5')), /^ {3}wooster: Wooster, Ohio, 1981-2010, 49 km away$/m);
});

test('distances: one degree of a meridian, and London to Paris', () => {
  // 2 pi 6371 km / 360, and 344 km between the centres of the two cities as encyclopaedias print it (from memory).
  near(kilometres({ latitude: 0, longitude: 0 }, { latitude: 1, longitude: 0 }), 111.19, 0.01);
  near(kilometres({ latitude: 51.507, longitude: -0.128 }, { latitude: 48.857, longitude: 2.352 }), 344, 2);
});
