/** Who the hand-out is by. `edition`: "edition of April 18, 2026". */
export const by = (club: string, almanac: string, edition: string): string => `${club}. ${almanac}, ${edition}.`;
export const whoDecides = 'The label, the inspector, the extension service and your doctor decide, not these sheets.';
export const onPhone = 'This set, on a phone';
export const missing = (page: string): string => `Not in this set: ${page}. `;
export const whoToCall = 'Who to call: ';
export const sources = 'Sources: ';
export const sourcesInFull = (short: readonly string[], address: string): string =>
  `${short.join('; ')}. In full, with their numbers: ${address}`;
