/*
 * Checks cautions, which follow from the work that a page describes. The page must list the work that its words mention. Each hazard of
 * that work needs a caution that can be shown.
 */
import type { Diagnostic } from '../source/diagnostic.ts';
import { plainText } from '../source/prose.ts';
import { HAZARDS, type Caution } from '../schemas/cautions.ts';
import { HAZARDS_OF, OWN_WORK, TREATMENT_WORK, type Hazard, type Work } from '../schemas/hazards.ts';
import { partsOf } from './bulletins.ts';
import { fieldName, type ValidEntries, type ValidEntry } from './fields.ts';
import { nearName } from '../../shared/words/near-name.ts';
import { atField, atFieldName, atWords, isDraft, isPage, isWithdrawn, type Page } from './place.ts';

type Working = ValidEntry<{ work?: Work[] | undefined }>;
type YardPage = ValidEntry<{ yard: boolean; work?: Work[] | undefined }>;

export function cautionFaults(club: ValidEntries): Diagnostic[] {
  const pages: YardPage[] = [...club.of.checklists, ...club.of.bulletins, ...club.of.articles, ...club.of.meetings];
  const working = [...pages, ...club.of.sheets];
  return [
    ...missingFaults(club, working),
    ...ownFaults(club, working),
    ...pages.flatMap((page) => [...yardFaults(page), ...unlistedFaults(page)]),
    ...club.of.cautions.flatMap(boxFaults),
  ];
}

type Call = { entry: ValidEntry; path: PropertyKey[]; word: string; hazard: Hazard };

/** Every hazard that published content brings: from the work of a page, and from a label row. */
function callsOf(club: ValidEntries, pages: Working[]): Call[] {
  const call = (entry: ValidEntry, path: PropertyKey[], word: string, work: Work): Call[] =>
    HAZARDS_OF[work].map((hazard) => ({ entry, path, word, hazard }));
  return [
    ...pages.filter(isShown).flatMap((entry) => (entry.data.work ?? []).flatMap((work, index) => call(entry, ['work', index], work, work))),
    ...club.of.treatments
      .filter(isShown)
      .flatMap((entry) =>
        entry.data.rows.flatMap((row, at) =>
          row.hazards.flatMap((word, index) =>
            TREATMENT_WORK[word].flatMap((work) => call(entry, ['rows', at, 'hazards', index], word, work)),
          ),
        ),
      ),
  ];
}

/** Reports each hazard once, at the first entry that brings it. */
function missingFaults(club: ValidEntries, pages: Working[]): Diagnostic[] {
  const calls = callsOf(club, pages);
  const gone = withdrawnIn(club);
  const missing = [...new Set(calls.map(({ hazard }) => hazard))].filter((hazard) => !club.ids.cautions.has(hazard) || gone.has(hazard));
  return missing.map((hazard) => {
    const { entry, path, word } = calls.find((call) => call.hazard === hazard)!;
    return atField(entry, path, {
      rule: 'caution',
      field: path[0] === 'work' ? 'work' : fieldName(path),
      ...(gone.has(hazard)
        ? {
            found: `"${word}", which calls for a caution that was withdrawn`,
            write: `cautions/${hazard}.yaml mended and without "withdrawn:", or this page withdrawn as well`,
          }
        : { found: `"${word}", which calls for a caution that is not there`, write: `a file cautions/${hazard}.yaml` }),
    });
  });
}

const withdrawnIn = (club: ValidEntries): Set<string> => new Set(club.of.cautions.filter(isWithdrawn).map(({ id }) => id));
const isShown = (entry: ValidEntry): boolean => !isDraft(entry) && !isWithdrawn(entry);

/** The almanac's own pages need cautions in every club. Those that a content page needs are reported at that page. */
function ownFaults(club: ValidEntries, pages: Working[]): Diagnostic[] {
  if (!club.club) return [];
  const called = new Set(callsOf(club, pages).map(({ hazard }) => hazard));
  const missing = [...new Set(OWN_WORK.flatMap((work) => HAZARDS_OF[work]))].filter(
    (hazard) => !called.has(hazard) && (!club.ids.cautions.has(hazard) || withdrawnIn(club).has(hazard)),
  );
  return missing.map((hazard) => ({
    path: `cautions/${hazard}.yaml`,
    line: 1,
    column: 1,
    rule: 'caution',
    field: 'the content folder',
    found: 'no such file, or a withdrawn one, and a page that every almanac has calls for it',
    write: 'the file, as in the demo club',
  }));
}

function yardFaults(page: YardPage): Diagnostic[] {
  const { yard, work = [] } = page.data;
  if (yard && work.length === 0)
    return [
      atField(page, ['yard'], {
        rule: 'work',
        field: 'yard',
        found: 'true, and no work listed',
        write: 'a list "work:" with what the hands do, such as open-hive',
      }),
    ];
  if (!yard && work.includes('open-hive'))
    return [
      atField(page, ['yard'], {
        rule: 'work',
        field: 'yard',
        found: 'false, and open-hive among the work',
        write: '"yard: true", so that the page carries the emergency number',
      }),
    ];
  return [];
}

/** Words that occur only where that work is done. The list is short, so that each word can be explained to an author. */
const SPEAKS_OF: readonly [RegExp, Work][] = [
  [/\bsmokers?\b|\bpuffs? of smoke\b|\bsmoke the\b/i, 'smoke'],
  [/\b(?:oxalic|formic) acid\b/i, 'acid'],
  [/\bvapou?ri[sz]er\b|\bsublimat\w+/i, 'vapour'],
  [/\b(?:alcohol wash|rubbing alcohol|isopropyl)\b/i, 'alcohol'],
  [/\b(?:carbon dioxide|dry ice)\b/i, 'carbon-dioxide'],
  [/\bladder\b/i, 'climb'],
  [/\bdrive (?:home|straight|the package|them home)\b|\bin(?:to)? (?:the|your) (?:car|truck)\b/i, 'drive-bees'],
  [/\b(?:blow ?torch|propane|scorch)\b/i, 'fire'],
];

function unlistedFaults(page: YardPage): Diagnostic[] {
  if (!isPage(page)) return [];
  const listed = new Set(page.data.work ?? []);
  const work = doneHere(page);
  return SPEAKS_OF.flatMap(([pattern, needs]): Diagnostic[] => {
    if (listed.has(needs)) return [];
    const node = work.find((each) => pattern.test(plainText(each)));
    if (!node) return [];
    const word = pattern.exec(plainText(node))![0];
    return [
      atWords(page, node, word, {
        rule: 'work',
        field: 'work',
        found: `"${word}", and no ${needs} among the work`,
        write: `a line "- ${needs}" under "work:", so that its caution is shown`,
      }),
    ];
  });
}

/** The work that a reader of the page does: the steps of a yard list, and a bulletin's test and first measures. */
function doneHere(page: Page & YardPage): Page['tree']['children'] {
  if (page.collection === 'checklists') return page.data.yard ? stepsIn(page.tree.children) : [];
  if (page.collection !== 'bulletins') return [];
  return stepsIn(
    partsOf(page)
      .filter(({ name }) => name === 'The field test' || name === 'What to do today')
      .flatMap(({ content }) => content as Page['tree']['children']),
  );
}

/** Takes the lines of lists one by one, so that a "Do not" counts only for its own line. */
const stepsIn = (nodes: Page['tree']['children']): Page['tree']['children'] =>
  nodes
    .flatMap((node) => (node.type === 'list' ? (node.children as unknown as Page['tree']['children']) : [node]))
    .filter((node) => node.type !== 'heading' && !/^(?:Do not|Never)\b/.test(plainText(node)));

/** Checks a caution's own fields: one known hazard, one of our three headings, and few enough words. */
function boxFaults(entry: ValidEntry<Caution>): Diagnostic[] {
  const { heading, calls, line, gravity } = entry.data;
  const faults: Diagnostic[] = [];
  if (!(HAZARDS as readonly string[]).includes(entry.id)) {
    const near = nearName(entry.id, HAZARDS);
    faults.push({
      path: entry.path,
      line: 1,
      column: 1,
      rule: 'caution',
      field: "the file's name",
      found: `"${entry.id}", a hazard that no work calls for`,
      write: near ? `"${near}.yaml"` : `one of: ${HAZARDS.join(', ')}`,
    });
  }
  if (!heading.startsWith(calls))
    faults.push(
      atField(entry, ['heading'], {
        rule: 'caution',
        field: 'heading',
        found: `"${heading}", while calls is "${calls}"`,
        write: `a heading that begins "${calls}"`,
      }),
    );
  const words = line.trim().split(/\s+/).length;
  if (words > 15)
    faults.push(atField(entry, ['line'], { rule: 'caution', field: 'line', found: `${words} words`, write: 'under 16 words' }));
  for (const field of ['says', 'if-it-happens'] as const) {
    const sentences = entry.data[field];
    if (!sentences || (sentences.length >= 2 && sentences.length <= 5)) continue;
    faults.push(
      atFieldName(entry, [field], {
        rule: 'caution',
        field,
        found: `${sentences.length} ${sentences.length === 1 ? 'sentence' : 'sentences'}`,
        write: 'two to five',
      }),
    );
  }
  if (gravity < 1)
    faults.push(
      atField(entry, ['gravity'], { rule: 'caution', field: 'gravity', found: String(gravity), write: '1 for the gravest, or more' }),
    );
  return faults;
}
