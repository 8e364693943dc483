export const backToStep = (number: string): string => `Back to step ${number}`;
/** Inside a sentence, where the club names nobody for a duty. */
export const theClub = 'the club';
export const noDate = 'no date for this club';
export const calculateIt = 'Calculate it';

/** Without a place, the rules of several places follow. */
export const law = (place?: string): string => `The law in ${place ?? 'your country'}`;
/** `office` is its name in a sentence. `{number}` shows a comma and its number, if it has one. */
export const callOffice = (office: string): string => `Call ${office}{number}. `;
export const moreOnLaw = 'More on the law here';

/** `office` as above. */
export const notWritten = (office = 'the office that answers for bees where you live'): string =>
  `What holds here is not written yet. Ask ${office}{number}.`;

const count = (number: number, one: string): string => `${number} ${one}${number === 1 ? '' : 's'}`;
export const steps = (number: number): string => count(number, 'step');
export const cases = (number: number): string => count(number, 'case');

/** How far a list is ticked. `next` marks the step, and `then` names it. */
export const progress = {
  count: '{done} of {all}',
  done: '{done} of {all} done.',
  next: 'Next',
  then: 'Next: {step}',
  all: 'All done',
};

export const allIsWell = 'All is well here';
/** `{who}` is the contact. */
export const asked = 'I asked: {who}';
export const takeCare = 'Take care: ';
