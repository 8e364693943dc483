/** The list of pests and diseases, and the lines that the page of each has beside its own words. */
export const title = 'Problems';
export const lead = 'What you see, what looks like it, the field test, and what to do today.';
export const startFromSigns = 'Start from the signs';
export const treatments = 'Treatments by active ingredient';
export const groups = { law: 'Report these', act: 'Act on these', watch: 'Watch for these', settled: 'Not urgent' };
/** After the status of what the law wants reported. */
export const statusIn = (status: string, place: string): string => `${status} in ${place}`;
export const lookAtThese = 'Look at these too:';
export const alsoCalled = 'Also called {names}.';
export const confidence = (sureness: string): string => `Confidence: ${sureness}.`;
