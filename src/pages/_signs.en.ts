export const title = 'Start from the signs';
export const lead = 'Tick what you see. You get what to check next, how to tell it from its look-alikes, and who to call.';
export const partOfYear = 'Part of the year';
export const notChosen = 'Not chosen';
export const show = 'Show what to check';
export const clear = 'Clear';
export const toCheck = 'What to check';
/** `who` is a name in a sentence, and `{number}` a comma and its number, if it has one. */
export const canMiss = (who: string): string =>
  `**This list can miss things.** If brood looks or smells wrong, close the hive, keep the tools there, and call ${who}{number}.`;
export const canMissAsk =
  '**This list can miss things.** If brood looks or smells wrong, close the hive, keep the tools there, and [ask](who-to-ask).';
export const all = 'All troubles with their signs';
export const key = 'A key: find the sign above, then the trouble below.';
