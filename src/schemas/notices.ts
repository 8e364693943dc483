/* notices/: urgent news for members with a first and a last day, such as a disease near by, a recall, or a cancelled meeting. */
import { z } from 'astro/zod';
import { day, duty, id, idOf, list, oneOf, section, shelf, words } from './fields.ts';

export const NOTICE_KINDS = ['disease', 'recall', 'called off', 'law', 'other'] as const;

/** In `concerns:`, for a notice on every page. */
export const EVERY_PAGE = 'every page';

export const notices = section({
  title: words('what is the matter, in a few words', 'Foulbrood on the hill'),
  kind: oneOf(NOTICE_KINDS),
  says: list(words('one short sentence', 'Look at every brood frame this week.'))
    .min(1, { error: 'at least one sentence' })
    .describe('What to do, first thing first.'),
  from: day().describe('The first day on which it is shown.'),
  until: day('the last day on which it is shown, such as 2026-04-18'),
  district: id('a district of club.yaml, such as valley').optional().describe('The district it speaks of; leave out for all.'),
  concerns: list(words('an address such as /pests/american-foulbrood/, or "every page"'))
    .min(1, { error: 'at least one address, or "every page"' })
    .describe('Where it stands, at the head of the page.'),
  ask: duty().describe('Who to ask.'),
  by: words('the duty that puts it out, such as "disease officer"').describe("Never a person's name."),
  source: idOf('sources').optional().describe('Where it is published, if it is.'),
  ...shelf,
});

export type Notice = z.infer<typeof notices>;
