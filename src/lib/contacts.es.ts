import type * as English from './contacts.en.ts';

export const noNumber: string = 'su número no está aquí';

/** The name as the club wrote it: a first letter that is no name of a person or place becomes small after an article. */
export const inSentence: typeof English.inSentence = (name) =>
  name.replace(/^(?:El|La|Los|Las|Su|Un|Una) /, (article) => article.toLowerCase());
