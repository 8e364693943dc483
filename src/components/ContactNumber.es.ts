import type * as English from './ContactNumber.en.ts';

export const seeWhoToCall = 'Vea a quién llamar';
export const whoToCallInSentence = 'vea a quién llamar';
export const call: typeof English.call = (number) => `Llamar al ${number}`;
