/* bulletins/: one pest, disease or trouble a page. */
import { z } from 'astro/zod';
import { CERTAINTIES, duty, list, oneOf, review, section, shelf, sources, when, words, WORK, yesNo, idOf } from './fields.ts';
import { SHOWS, STRENGTHS } from './signs.ts';

/** The headings every bulletin has, in this order. */
export const BULLETIN_PARTS = ['What you see', 'What looks like it', 'The field test', 'What to do today', 'What not to do'] as const;

const shown = section({
  sign: idOf('signs'),
  /** How strongly the sign points at this trouble rather than at another. */
  strength: oneOf(STRENGTHS),
  /** How often it shows where this trouble is; `never` speaks against it. */
  shows: oneOf(SHOWS),
});

export const bulletins = section({
  title: words('the plain name'),
  /** The trade's or scientific name. */
  'also-called': list(words('another name')).optional(),
  /** The answer first, in one or two sentences. */
  summary: words('the answer first, in one or two sentences'),
  kind: oneOf(['brood disease', 'adult disease', 'mite', 'insect', 'animal', 'poisoning', 'behaviour', 'want']),
  /** How grave: what word the page shows. */
  status: oneOf(['settled', 'watch', 'act', 'law']),
  when: when(),
  why: words('why then, in a few words'),
  /** Where the law asks that it be reported: place, whom, and the source. */
  law: list(section({
    place: words('the land or state'),
    duty: duty(),
    says: words('what the law asks, in one sentence'),
    source: idOf('sources'),
  })).optional(),
  /** Looking for it means opening a hive. */
  yard: yesNo(),
  work: list(oneOf(WORK)).optional(),
  /** The signs it shows, and those that speak against it. */
  signs: list(shown).optional(),
  /** Other bulletins whose signs are easily taken for these. */
  'looks-like': list(idOf('bulletins')).optional(),
  sources: sources(),
  certainty: oneOf(CERTAINTIES),
  ask: duty(),
  ...review,
  ...shelf,
});

export type Bulletin = z.infer<typeof bulletins>;
