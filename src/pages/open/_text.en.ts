export const title = 'Downloads';
export const lead = 'The almanac’s figures as a file for other programs, of the same edition as these pages.';
export const file =
  '[figures.csv](file) holds every figure with all its rows: a heading line, then a line for each row. Unit and source stand in columns of their own.';
export const ifYouUseIt = 'If you use it';
export const giveTheSource = (edition: string): string =>
  `Give the source of each number, its place, and the day of this edition: ${edition}.`;
export const fetchAgain = 'Fetch it again. Numbers are revised, and pages are withdrawn.';
export const whoDecides = 'The label, the inspector, the extension service and a doctor decide; say so where you print a number.';
export const nobody = 'No person’s name, number or yard is in it.';
