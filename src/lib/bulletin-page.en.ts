/** The part of a page with the rules that hold here. */
export const law = 'Law';
/** In place of days, for what may come at any time. */
export const anyTime = 'any time';
