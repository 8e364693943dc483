export const until = (day: string): string => `Until ${day}`;
/** `days`: "Until April 18, 2026". `{number}` shows a comma and the number, if there is one. */
export const notice = (days: string, where: string, ask: string, by: string, source: string): string =>
  `${days}${where && `, for ${where}`}. Ask: ${ask}{number}. From the ${by}.${source && ` ${source}.`}`;
