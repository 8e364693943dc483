/* What a page is in the words of schema.org, where one of its types is right; nothing where none is. */
import type { Review } from './page-context.ts';

export type SchemaType = 'HowTo' | 'Article' | 'Event' | 'DefinedTermSet' | 'Dataset' | 'ContactPage' | 'AboutPage' | 'WebApplication';

/** By what search calls the page. */
const TYPES: Record<string, SchemaType> = {
  checklist: 'HowTo',
  'pest or disease': 'Article',
  article: 'Article',
  'know-how': 'Article',
  treatment: 'Article',
  meeting: 'Event',
  words: 'DefinedTermSet',
  counts: 'Dataset',
  contact: 'ContactPage',
  about: 'AboutPage',
  calculator: 'WebApplication',
};

export const typeOf = (kind: string | null): SchemaType | undefined => (kind === null ? undefined : TYPES[kind]);

type Known = { review?: Review | undefined; event?: { start: string; end?: string | undefined } | undefined };

/** The day of the last check is the day on which the page was last made to agree with its sources. */
export function typedFacts(type: SchemaType, { review, event }: Known): [name: string, value: string][] {
  if (type === 'Event')
    return event ? [['startDate', event.start], ...(event.end ? [['endDate', event.end] as [string, string]] : [])] : [];
  if (type === 'WebApplication')
    return [
      ['applicationCategory', 'ReferenceApplication'],
      ['operatingSystem', 'any'],
    ];
  return review ? [['dateModified', review.checkedDay]] : [];
}
