/** The part of a page with the rules that hold here. */
export const law = 'Law';
