/** `{test}` is the test itself. */
export const fieldTest = '**Field test:** {test}';
export const wholeTest = 'The whole test';
/** For listeners, after "The whole test". `{trouble}` is its title. */
export const wholeTestFor = 'for {trouble}';
export const looksLikeIt = '**Looks like it:** {others}.';
/** `{who}` is the contact with its number. */
export const closeAndCall = '**Close the hive, leave the tools there, and call:** {who}.';
export const ask = '**Ask:** {who}.';
export const closeAndReport = '**Close the hive, leave the tools there, and report it** as the law here asks.';
export const itsSigns = 'Its signs';
export const neverFits = (sign: string): string => `${sign}: never, so it does not fit`;
export const shows = (sign: string, strength: string, often: string): string => `${sign}: ${strength}, ${often}`;
export const readMore = 'Read more on {trouble}';
