/*
 * Runs every check on a content folder and returns all diagnostics at once. Each rule is a function from the folder to diagnostics. Rules
 * that need valid fields get only the entries whose fields passed their schema.
 */
import { editionDay } from '../source/edition-day.ts';
import { formatDiagnostic, inReadingOrder, type Diagnostic } from '../source/diagnostic.ts';
import { readFolder, type Folder } from '../source/folder.ts';
import { answerFaults } from './answers.ts';
import { bookFaults } from './books.ts';
import { bloomSumFaults } from './bloom-sums.ts';
import { bulletinFaults } from './bulletins.ts';
import { calendarFaults } from './calendar.ts';
import { cautionFaults } from './cautions.ts';
import { checklistFaults } from './checklists.ts';
import { climateFaults } from './climate.ts';
import { consentHints, contactFaults, unsaidHints } from './contacts.ts';
import { drawingFaults } from './drawings.ts';
import { contestedFaults } from './contested.ts';
import { countFaults } from './counts.ts';
import { elsewhereFaults, elsewhereHints } from './elsewhere.ts';
import { fieldFaults, hasInvalid, supposedEntries, validEntries, type Given, type ValidEntries } from './fields.ts';
import { clubFileFaults } from './files.ts';
import { figureFaults } from './figures.ts';
import { formerFaults } from './former.ts';
import { futureFaults } from './future.ts';
import { holdingFaults } from './holding.ts';
import { headingFaults } from './headings.ts';
import { labelFaults } from './labels.ts';
import { linkFaults, linkHints } from './links.ts';
import { markdownFaults, typedHints } from './markdown.ts';
import { meetingFaults } from './meetings.ts';
import { nameFaults } from './names.ts';
import { noticeFaults } from './notices.ts';
import { observedFaults } from './observed.ts';
import { ownComputerFaults } from './own-computer.ts';
import { pictureFaults, pictureHints } from './pictures.ts';
import { privacyFaults, privacyHints } from './privacy.ts';
import { referenceFaults } from './references.ts';
import { reviewFaults } from './review.ts';
import { seasonWordHints } from './season-words.ts';
import { seasonFaults } from './season.ts';
import { signFaults } from './signs.ts';
import { sourceFaults } from './sources.ts';
import { spreadsheetHints } from './spreadsheets.ts';
import { stationFaults } from './stations.ts';
import { strayStepFaults } from './stray-steps.ts';
import { tagFaults } from './tags.ts';
import { meetingNameHints, titleFaults } from './titles.ts';
import { translationFaults, translationHints } from './translations.ts';
import { typedFaults } from './typed.ts';
import { untaggedFaults, untaggedHints } from './untagged.ts';
import { wordFaults } from './words.ts';

const RULES: readonly ((club: ValidEntries) => Diagnostic[])[] = [
  referenceFaults,
  sourceFaults,
  contactFaults,
  calendarFaults,
  climateFaults,
  stationFaults,
  observedFaults,
  bloomSumFaults,
  seasonFaults,
  reviewFaults,
  futureFaults,
  titleFaults,
  meetingFaults,
  figureFaults,
  labelFaults,
  bulletinFaults,
  checklistFaults,
  strayStepFaults,
  cautionFaults,
  noticeFaults,
  signFaults,
  answerFaults,
  countFaults,
  contestedFaults,
  untaggedFaults,
  privacyFaults,
  headingFaults,
  tagFaults,
  wordFaults,
  markdownFaults,
  linkFaults,
  ownComputerFaults,
  clubFileFaults,
  formerFaults,
  pictureFaults,
  drawingFaults,
  holdingFaults,
  elsewhereFaults,
];

const HINTS: readonly ((club: ValidEntries) => Diagnostic[])[] = [
  untaggedHints,
  seasonWordHints,
  pictureHints,
  elsewhereHints,
  linkHints,
  meetingNameHints,
  privacyHints,
  spreadsheetHints,
  typedHints,
  unsaidHints,
  (club) => consentHints(club, editionDay(club.folder)),
];

const isOfBook = ({ books }: Folder, path: string): boolean => books.some(({ id }) => path.startsWith(`books/${id}/`));

/** Every diagnostic of a folder that was read, in reading order. */
export function checkFolder(folder: Folder, given: Given = {}): Diagnostic[] {
  const further = [...fieldFaults(folder), ...typedFaults(folder), ...ofRules(folder, given)];
  return inReadingOrder([
    ...folder.faults,
    ...nameFaults(folder),
    ...bookFaults(folder),
    ...translationFaults(folder),
    ...further.filter(isReadable(folder.faults)),
  ]);
}

/** What a tag does is unknown before the tag is mended. */
const OF_TAGS = new Set(['tag', 'step']);

/**
 * A line that could not be read has no further fault before it is mended. In a line of words only its tags are left out, and what is
 * missing is reported at the first line.
 */
function isReadable(unread: readonly Diagnostic[]): (fault: Diagnostic) => boolean {
  const rules = new Map(unread.map((fault) => [lineOf(fault), fault.rule]));
  return (fault) => {
    const rule = rules.get(lineOf(fault));
    return rule === undefined || fault.rule === 'missing-field' || (rule === 'tag' && !OF_TAGS.has(fault.rule));
  };
}

/** What the rules report. Where a value is malformed, only what would be reported whatever it was meant to be. */
function ofRules(folder: Folder, given: Given): Diagnostic[] {
  if (!hasInvalid(folder)) return withRules(folder, validEntries(folder, given));
  const last = new Set(withRules(folder, supposedEntries(folder, given, 'last')).map(formatDiagnostic));
  return withRules(folder, supposedEntries(folder, given, 'first')).filter((fault) => last.has(formatDiagnostic(fault)));
}

/** The books were checked by themselves; what a club leaves out of them is no fault of theirs. */
const withRules = (folder: Folder, club: ValidEntries): Diagnostic[] =>
  RULES.flatMap((rule) => rule(club).filter(({ path }) => !isOfBook(folder, path)));

const lineOf = ({ path, line }: Diagnostic): string => `${path}:${line}`;

/** Hints: content that is valid but better written otherwise. `check` prints them and no build fails because of them. */
export const hintsOf = (folder: Folder): Diagnostic[] => {
  const club = validEntries(folder);
  const hints = [...HINTS.flatMap((rule) => rule(club)), ...translationHints(folder)];
  return inReadingOrder(hints.filter(({ path }) => !isOfBook(folder, path)));
};

/** Reads the folder at `directory` and returns all its diagnostics. */
export const check = (directory: string): Diagnostic[] => checkFolder(readFolder(directory));
