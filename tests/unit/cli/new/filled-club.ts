/* A club's folder from `new club`, with its blanks filled like a person would. */
import { write, type File } from '../../../../src/cli/new/draft.ts';
import { clubFiles } from '../../../../src/cli/new/club.ts';
import { readFolder } from '../../../../src/source/folder.ts';
import { filled } from './fill.ts';

// No reserved number and no example address, because this club says that it is no demonstration.
const OF_CLUB = {
  id: 'filled',
  name: 'Filled',
  almanac: 'The filled almanac',
  place: 'A county',
  language: 'en-US',
  words: 'us',
  hemisphere: 'north',
  'time-zone': 'America/New_York',
  units: 'us',
  number: '"911"',
  source: 'fcc-911',
  mistakes: 'almanac@bees.invalid',
  'later-by-days': '0',
  basis: 'A guess.',
  'winter-rest': '1 November to 14 March',
  'build-up': '15 March to 20 April',
  swarming: '21 April to 31 May',
  'main-flow': '1 June to 15 July',
  dearth: '16 July to 31 August',
  'fall-preparation': '1 September to 31 October',
  duty: 'inspector',
  ask: 'What to report',
  phone: '"911"',
  'public-office': 'true',
  review: 'Once a year.',
};
const OF_PAGE = {
  title: 'A page',
  sources: 'uk-apiary-hygiene',
  ask: 'inspector',
  mode: 'read-do',
  subject: 'flow',
  kind: 'meeting',
  day: '2026-09-12',
};

function filledFile({ path, text }: File): File {
  if (path === 'club.yaml') return { path, text: filled(text, OF_CLUB) };
  if (path.startsWith('checklists/'))
    return {
      path,
      text: filled(text, OF_PAGE).replace('## \n\n- [ ] \n', '## At home\n\n- [ ] Read the thermometer <Task id="thermometer" />\n'),
    };
  return { path, text: `${filled(text, { ...OF_PAGE, because: 'It is nearest.' })}${path.startsWith('articles/') ? 'Bees fly.\n' : ''}` };
}

/** Writes it into `directory`. Figures, sources and cautions come from the club in `from`. */
export function writeFilledClub(directory: string, from: string): void {
  write(directory, clubFiles(readFolder(from)).map(filledFile));
}
