/*
 * Folder of a new club, made of answers: club.yaml and one meeting over the books of its land, and the source of what it took from no
 * book.
 */
import { existsSync, readdirSync, statSync } from 'node:fs';
import { relative, resolve, sep } from 'node:path';
import { Document, isSeq, visit } from 'yaml';
import type { Day } from '../../../shared/days/day.ts';
import { climateOfStation } from '../../schemas/stations.ts';
import type { ClimateFields } from '../../schemas/climate.ts';
import { fieldOfReach, yearAfter } from './answer-values.ts';
import type { File } from './draft.ts';
import { KNOWN_DUTIES } from './duties.ts';
import { nameFor } from './file-name.ts';
import { offers, phasesBook, stationsFor, type Given } from './questions.ts';

/** The reason why a club's folder cannot be created there, or null. */
export function refusal(directory: string, project: string): string | null {
  const inside = !relative(resolve(project, 'content'), directory).startsWith('..');
  if (inside) return "That folder is inside the demo club's. Write a folder beside the almanac's, such as ../our-club.";
  if (!existsSync(directory)) return null;
  if (!statSync(directory).isDirectory()) return `${directory} is a file. Write the name of a new folder.`;
  return readdirSync(directory).length === 0
    ? null
    : `${directory.split(sep).at(-1)} already holds files, and was not changed. Write the name of a new folder.`;
}

/** Every file, with paths inside the folder. Answers are complete and right. */
export function clubFiles(answers: Given, today: Day): File[] {
  const { 'meeting-day': day, 'meeting-title': title } = answers;
  return [
    { path: 'club.yaml', text: `${HEAD}${yaml(clubFields(answers, today))}` },
    {
      path: `meetings/${day}-${nameFor(title!)}.mdx`,
      text: `---\n${yaml(meetingFields(answers, today))}---\n`,
    },
    ...sourcesOf(answers, today),
  ];
}

const HEAD = '# What each line means: docs/reference.md of the almanac. A line that may be left out may be added from there.\n';

/** Lists of numbers stay on one line. */
function yaml(value: unknown): string {
  const document = new Document(value);
  visit(document, {
    Seq: (_, node) => {
      if (isSeq(node) && node.items.every((item) => typeof (item as { value?: unknown }).value === 'number')) node.flow = true;
    },
  });
  return document.toString({ lineWidth: 0, flowCollectionPadding: false });
}

function clubFields(answers: Given, today: Day): object {
  const { name, land, hemisphere, place, site, mistakes } = answers;
  const offered = offers(answers);
  const poison = answers.poison === 'yes' ? offered.poison : undefined;
  const climate = climateOf(answers);
  return {
    id: nameFor(name!),
    name,
    almanac: `The almanac of ${name}`,
    demonstration: false,
    place,
    language: answers.language,
    words: answers.words,
    hemisphere,
    land,
    'time-zone': answers['time-zone'],
    units: answers.units,
    emergency:
      answers['emergency-number'] === undefined
        ? offered.emergency
        : { number: answers['emergency-number'], name: 'Emergency number', source: 'emergency-number' },
    ...(poison ? { poison } : {}),
    mistakes,
    ...(site ? { site } : {}),
    districts: [{ id: 'here', name: place, 'later-by-days': 0, basis: 'It is the only district; the dates of the season are its own.' }],
    season: {
      basis: basisOf(answers),
      checked: today,
      'next-check': yearAfter(today),
      ...(offered.phases ? { phases: offered.phases } : {}),
    },
    ...(climate ? { climate } : {}),
    contacts: contactsOf(answers),
    review: 'Each page names who checked it and when: the editors of a shared book, or a duty of this club.',
    'meeting-place': answers['meeting-place'],
  };
}

function contactsOf(answers: Given): object[] {
  const reached = (text: string): object => ({ [fieldOfReach(text)]: text });
  const duty = answers['contact-duty']!;
  const agreed = answers['contact-agreed'] as Day;
  return [
    {
      duty: 'inspector',
      name: answers.inspector,
      ask: 'Suspected foulbrood and other notifiable diseases, moving bees, registering hives',
      ...reached(answers['inspector-reach']!),
      'public-office': true,
    },
    {
      duty,
      name: answers['contact-name'],
      ask: KNOWN_DUTIES[duty]?.ask ?? 'Questions about bees and the club',
      ...reached(answers['contact-reach']!),
      agreed,
      until: yearAfter(agreed),
    },
    // Without a number: the pages on stings send their reader there, in every club.
    { duty: 'doctor', name: 'Your own doctor', ask: 'Reactions to stings, and what to carry against them' },
  ];
}

function meetingFields(answers: Given, today: Day): object {
  const [start, finish] = answers['meeting-hours'] ? answers['meeting-hours'].split(' to ') : [];
  return {
    title: answers['meeting-title'],
    summary: 'What it is about is announced before the day.',
    day: answers['meeting-day'],
    ...(start ? { start, finish } : {}),
    place: answers['meeting-place'],
    kind: 'meeting',
    ask: answers['contact-duty'],
    yard: false,
    checked: today,
    'next-check': yearAfter(today),
    by: 'almanac editor',
  };
}

const stationOf = (answers: Given) => stationsFor(answers).find(({ station }) => station.id === answers.climate);

function climateOf(answers: Given): ClimateFields | null {
  const chosen = stationOf(answers);
  if (chosen) return climateOfStation(chosen.station);
  if (answers.climate !== 'own') return null;
  const numbers = (text: string): number[] => text.split(', ').map(Number);
  return {
    scale: answers['climate-scale'] as ClimateFields['scale'],
    minima: numbers(answers['climate-lows']!),
    maxima: numbers(answers['climate-highs']!),
    latitude: Number(answers['climate-latitude']),
    period: answers['climate-years']!,
    source: 'normals',
  };
}

/** Where the dates come from: printed on the About page. */
export function basisOf(answers: Given): string {
  const chosen = stationOf(answers);
  const book = phasesBook(answers);
  const proposed = book ? `${sentenceCase(book)} proposes the parts of the year` : null;
  if (!chosen && answers.climate !== 'own')
    return `${proposed ?? 'Nothing proposes the parts of the year'}. Nobody here has compared them with notes of this place yet.`;
  const away = typeof chosen?.km === 'number' ? `, about ${chosen.km} km from here` : '';
  const normals = chosen
    ? `Worked out from the monthly normals of ${chosen.station.name}${away} (${chosen.station.period}).`
    : `Worked out from monthly normals (${answers['climate-years']}).`;
  return `${normals}${proposed ? ` ${proposed} where the normals give no date.` : ''}`;
}

const sentenceCase = (text: string): string => text.replace(/^\p{Ll}/u, (letter) => letter.toUpperCase());

function sourcesOf(answers: Given, today: Day): File[] {
  const source = (name: string, key: 'emergency' | 'climate'): File[] =>
    answers[`${key}-published-by`] === undefined
      ? []
      : [
          {
            path: `sources/${name}.yaml`,
            text: yaml({
              who: answers[`${key}-published-by`],
              where: answers[`${key}-published-at`],
              kind: 'agency',
              seen: 'itself',
              opened: today,
            }),
          },
        ];
  return [...source('emergency-number', 'emergency'), ...source('normals', 'climate')];
}
