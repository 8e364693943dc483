export const title = 'Reading';
export const lead = 'What is worth reading, who it is for, and which library lends it.';
/** By the field `kind`, in the order of the page. */
export const kinds = {
  starter: 'To start with',
  'next step': 'The next step',
  reference: 'To look things up in',
  periodical: 'Periodicals',
  'free leaflet': 'Leaflets',
};
export const free = 'Free to read';
export const toBorrow = 'To borrow or take home';
export const savePdf =
  'These are public documents of agencies and universities. Save a PDF on your phone before you go where there is no signal. You need a signal to read a web page.';
export const madeUp = 'The titles marked “invented” are made up for the demonstration.';
export const noDate = 'no date';
export const readers = {
  any: 'For anybody.',
  'first year': 'For a first year.',
  'some seasons': 'For people with some seasons.',
};
export const invented = 'Invented.';
export const oldMiteAdvice = (year: number): string => `Its mite advice is of ${year}: check it against these pages.`;
export const writtenFor = 'Written for {place}.';
export const lentBy = (library: string): string => `Lent by ${library}.`;
export const formats = { PDF: 'PDF', paper: 'On paper', 'web page': 'Web page' };
export const opened = (day: string): string => `opened ${day}`;
