import { monthNames } from '../../shared/days/month-names.ts';

/** By the path of an overview page: what people type who look for it. */
export const overviews: Readonly<Record<string, readonly string[]>> = {
  'year/': ['what to do this month', monthNames.join(' ')],
  'meetings/': ['next meeting', 'when and where we meet', 'meeting dates', 'calendar'],
  'signs/': ['start from the signs', 'what is wrong with my bees', 'symptoms', 'which disease', 'sick brood'],
  'about/': [],
  'words/': [],
};
