/* notices/: what members must hear now, from a day to a day: a disease near by, a recall, a meeting that is off. */
import { z } from 'astro/zod';
import { day, duty, id, idOf, list, oneOf, section, shelf, words } from './fields.ts';

export const NOTICE_KINDS = ['disease', 'recall', 'called off', 'law', 'other'] as const;

/** In `concerns:`, for a notice that stands on every page. */
export const EVERY_PAGE = 'every page';

export const notices = section({
  title: words('what is the matter, in a few words'),
  kind: oneOf(NOTICE_KINDS),
  /** What to do, first thing first. */
  says: list(words('one short sentence')).min(1, { error: 'at least one sentence' }),
  /** The first and the last day on which it is shown. */
  from: day(),
  until: day('the last day on which it is shown, such as 2026-04-18'),
  /** The district it speaks of; leave out for all. */
  district: id().optional(),
  /** Addresses of the pages at whose head it stands, or "every page". */
  concerns: list(words('an address such as /pests/american-foulbrood/, or "every page"')).min(1, { error: 'at least one address, or "every page"' }),
  /** Whom to ask. */
  ask: duty(),
  /** The duty that put it out, never a person's name. */
  by: words('the duty that puts it out, such as "disease officer"'),
  /** Where it is published, where it is. */
  source: idOf('sources').optional(),
  ...shelf,
});

export type Notice = z.infer<typeof notices>;
