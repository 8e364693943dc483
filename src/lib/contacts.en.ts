/** In place of the number of a line, within a sentence. */
export const noNumber: string = 'whose number is not given here';

/** A contact's name in the middle of a sentence: "the county extension office". */
export const inSentence = (name: string): string =>
  `the ${name.replace(/^[A-Z](?=[a-z])/, (letter) => letter.toLowerCase())}`.replace(/^the (the|your) /, '$1 ');
