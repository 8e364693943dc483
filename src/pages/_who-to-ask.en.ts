export const title = 'Who to call';
export const lead = 'Who to ask about what, and when. If a person is unwell, call first and read later.';
export const byRole = 'By role';
export const languages = (spoken: readonly string[]): string => `Also in ${spoken.join(' and ')}.`;
export const agreed = (until: string): string => `Agreed until ${until}; from that day the number is not shown.`;
export const noConsent = 'No consent to show a number holds now.';
/** In place of a person's number that may not be shown. */
export const writeToClub = (address: string): string => `Write to the club: ${address}`;
export const madeUp = (numbers: readonly string[]): string =>
  `All numbers but ${numbers.join(' and ')} are made up, and so are the addresses.`;
