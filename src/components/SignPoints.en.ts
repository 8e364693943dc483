/** How the sign finder puts troubles in order. Each number is one of its constants. */
type Lost = { always: string; often: string; sometimes: string };
export const title = 'How they are put in order';
export const there = 'A sign that is there gives points: how strongly it points, times how often it shows.';
export const never = 'A sign that never shows in a trouble takes the same away.';
export const notThere = ({ always, often, sometimes }: Lost): string =>
  `Looked for and not there takes away ${always} where it always shows, ${often} where often, ${sometimes} where sometimes.`;
export const unlisted = (points: string, outOfSeason: string): string =>
  `A sign that a trouble does not account for takes away ${points}; another part of the year ${outOfSeason}.`;
export const reportFirst = 'What must be reported stands first, if one sign fits at all.';
export const table = 'Points of a sign that is there';
export const ownRule = 'The points are this almanac’s own rule. They say what to look at first, never what a colony has.';
