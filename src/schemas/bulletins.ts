/* bulletins/: one pest, disease or trouble per page. */
import { z } from 'astro/zod';
import { CERTAINTIES, duty, list, oneOf, review, section, shelf, sources, when, words, WORK, yesNo, idOf } from './fields.ts';
import { SHOWS, STRENGTHS } from './signs.ts';
import { holding } from './where.ts';

/** The headings of every bulletin, in this order. */
export const BULLETIN_PARTS = ['What you see', 'What looks like it', 'The field test', 'What to do today', 'What not to do'] as const;

const shown = section({
  sign: idOf('signs'),
  strength: oneOf(STRENGTHS).describe('How strongly the sign points at this trouble rather than at another.'),
  shows: oneOf(SHOWS).describe('How often it shows where this trouble is; `never` speaks against it.'),
});

export const bulletins = section({
  title: words('the plain name', 'Chalkbrood'),
  'also-called': list(words('another name', 'Ascosphaera apis')).optional().describe("The trade's or scientific name."),
  summary: words('the answer first, in one or two sentences', 'A fungus that dries larvae to chalk. Strong colonies get over it.'),
  kind: oneOf(['brood disease', 'adult disease', 'mite', 'insect', 'animal', 'poisoning', 'behaviour', 'want']),
  status: oneOf(['settled', 'watch', 'act', 'law']).describe('How grave: what word the page shows.'),
  when: when(),
  why: words('why then, in a few words', 'Cool, wet weeks bring it out.'),
  law: list(
    section({
      place: words('the land or state', 'Ohio'),
      duty: duty(),
      says: words('what the law asks, in one sentence', 'Report it to the state inspector at once.'),
      source: idOf('sources'),
      ...holding,
    }),
  )
    .optional()
    .describe('Where the law asks that it be reported: place, whom, and the source.'),
  yard: yesNo().describe('Looking for it means opening a hive.'),
  work: list(oneOf(WORK)).optional().describe('What the hands do: the cautions follow from it.'),
  signs: list(shown).optional().describe('The signs it shows, and those that speak against it.'),
  'looks-like': list(idOf('bulletins')).optional().describe('Other bulletins whose signs are easily taken for these.'),
  sources: sources(),
  certainty: oneOf(CERTAINTIES).describe('How sure its sources are.'),
  ask: duty().describe('Who to ask next.'),
  ...holding,
  ...review,
  ...shelf,
});

export type Bulletin = z.infer<typeof bulletins>;
