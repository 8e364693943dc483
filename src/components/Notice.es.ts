import type * as English from './Notice.en.ts';

export const until: typeof English.until = (day) => `Hasta el ${day}`;
export const notice: typeof English.notice = (days, where, ask, by, source) =>
  `${days}${where && `, para ${where}`}. Pregunte a: ${ask}{number}. De parte de: ${by}.${source && ` ${source}.`}`;
