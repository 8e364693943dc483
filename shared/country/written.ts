/*
 * Text of a book as the club's country writes it. The wide books are in American English. A club elsewhere gets its own spelling, autumn
 * for fall, and the day before the month. Addresses and ids never change. Spelling: the SCOWL word lists en_US, en_GB-ise, en_AU and
 * en_CA, against which the test compares every word of the books.
 */
import { monthNames } from '../days/month-names.ts';
import { isMonthFirst, type Language } from './language.ts';

const ENDINGS = 's|y|ed|ing|less|ful|hood|ly|ite|able|e|es|er|ers|ation|ations';

/** American words and their British forms, where Canada writes as Britain does. Any of ENDINGS may follow. */
const EVERYWHERE = pairs(`
  behavior behaviour, canceled cancelled, canceling cancelling, center centre, color colour, favor favour, fiber fibre, flavor flavour,
  gray grey, harbor harbour, honor honour, humor humour, judgment judgement, labeled labelled, labeling labelling, labor labour,
  liter litre, milliliter millilitre, millimeter millimetre, centimeter centimetre, kilometer kilometre, modeled modelled,
  modeling modelling, mold mould, molt moult, neighbor neighbour, odor odour, plow plough, shriveled shrivelled, shriveling shrivelling,
  signaled signalled, sulfur sulphur, traveled travelled, traveling travelling, vapor vapour
`);

/** The same where Canada writes as America does. */
const BEYOND_AMERICA = pairs(`
  analyz analys, authoriz authoris, crystalliz crystallis, diarrhea diarrhoea, feces faeces, fertiliz fertilis, minimiz minimis,
  organiz organis, pasteuriz pasteuris, realiz realis, recogniz recognis, steriliz sterilis, vaporiz vaporis,
  winteriz winteris
`);

/** The same where Australia writes as America does, too. */
const BEYOND_AUSTRALIA = pairs('program programme');

/** Fall is a season where a word of time or of the year's work stands beside it. Mites and caps fall, too. */
const SEASON_BEFORE =
  '(?<=^|\\b(?:early|late|in|of|this|last|next|every|each|by|since|until|one|spring and|for|from|build-up to|swarming to|[0-9]+[,:]?) )';
const SEASON_AFTER =
  '(?= (?:preparation|flow|trial|count|stores|list|introductions|feeding|honey|bees|treatments?|work|supers?|weather|nights?|and spring|and winter)\\b)';
const NO_VERB = '(?! (?:off|below|ill|out|from|into|through|over|down|to)\\b)';
const FALL = new RegExp(`${SEASON_BEFORE}fall\\b${NO_VERB}|\\bfall\\b${SEASON_AFTER}`, 'gi');

const MONTHS = monthNames.join('|');
const DAY = new RegExp(`\\b(${MONTHS})([ \\u00a0])(\\d{1,2}(?:(?: to |–)\\d{1,2})?)(?!\\d|:\\d)(?:,[ \\u00a0](\\d{4}))?`, 'g');

/** Text of the wide books for readers of `language`. */
export function asWritten(text: string, language: Language): string {
  if (language === 'en-US') return text;
  let written = replaced(text, EVERYWHERE);
  if (language !== 'en-CA') {
    written = replaced(written, BEYOND_AMERICA);
    if (language !== 'en-AU') written = replaced(written, BEYOND_AUSTRALIA);
    written = written.replace(FALL, (found) => (found.startsWith('F') ? 'Autumn' : 'autumn'));
  }
  return isMonthFirst(language)
    ? written
    : written.replace(
        DAY,
        (_, month: string, space: string, days: string, year?: string) => `${days}${space}${month}${year ? ` ${year}` : ''}`,
      );
}

type Pairs = { pattern: RegExp; british: ReadonlyMap<string, string> };

function pairs(words: string): Pairs {
  const british = new Map(words.split(',').map((pair) => pair.trim().split(/\s+/) as [string, string]));
  return { british, pattern: new RegExp(`\\b(dis|un|re)?(${[...british.keys()].join('|')})(${ENDINGS})?\\b`, 'gi') };
}

const replaced = (text: string, { pattern, british }: Pairs): string =>
  text.replace(pattern, (_, before = '', found: string, ending = '') => {
    const right = british.get(found.toLowerCase())!;
    // "Centre" and "centred": a silent e goes before a vowel.
    const whole = /re$/.test(right) && /^[ei]/.test(ending) ? right.slice(0, -1) : right;
    return before + (/^[A-Z]/.test(found) ? whole[0]!.toUpperCase() + whole.slice(1) : whole) + ending;
  });
