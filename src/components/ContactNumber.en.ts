/** Alone and in a sentence, in place of a number. */
export const seeWhoToCall = 'See who to call';
export const whoToCallInSentence = 'see who to call';
export const call = (number: string): string => `Call ${number}`;
