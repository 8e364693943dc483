/** `{district}` shows the reader's own. */
export const datesAreFor = 'Dates are for {district}. ';
/** `{edition}` shows its day and mark. */
export const published = (club: string, place: string): string => `${club}, ${place} · Edition of {edition}`;
export const demonstration = ' · Demo site: this club, its county, dates and numbers are invented.';
export const whoDecides = 'The label, the inspector, the extension service and your doctor decide, not this page.';
export const about = 'About this almanac';
export const whoToCall = 'Who to call';
export const display = 'Display settings';
export const displayAndDistrict = 'Display and district';
export const review = 'How this is reviewed';
export const reportMistake = 'Report a mistake';
