export const ifItHappens = 'If it happens';
export const beforeYouOpen = 'Before you open a hive';
export const more = 'More';
/** For listeners, after "More". `heading` is that of the caution. */
export const moreOn = (heading: string): string => `on: ${heading}`;

const decides = { label: 'the label', extension: 'the extension service', regulator: 'the regulator', doctor: 'a doctor' } as const;

/** Whom the caution defers to. One or more. */
export const inTheEnd = (who: readonly (keyof typeof decides)[]): string =>
  `In the end ${new Intl.ListFormat('en', { type: 'conjunction' }).format(who.map((each) => decides[each]))} ${who.length > 1 ? 'decide' : 'decides'}.`;
