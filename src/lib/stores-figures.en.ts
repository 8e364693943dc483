/* When syrup must be fed, with its place and its basis: after "Fed by" and "by". */
export const beforeCold = (day: string, place: string, basis: string): string =>
  `some weeks before ${day}, in ${place}: about then days grow too cold (${basis}), and nights do sooner.`;
export const byDay = (day: string, place: string, basis: string): string =>
  `${day} in ${place} (${basis}). To dry it, bees need mild nights as well as mild days.`;
