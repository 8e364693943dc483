/* Words of rows and lists. `word` names one of them, as in "Colony 2". `found` is what was typed. */
export const numbered = (word: string, at: number): string => `${word} ${at}`;
export const inRow = (word: string, at: number, says: string): string => `${word} ${at}: ${says}`;
export const remove = (word: string, at: number): string => `Remove ${word.toLowerCase()} ${at}`;
export const tooManyRows = (most: number, found: number): string => `The form takes ${most} rows at most, and these are ${found}.`;
export const wrongLine = (line: number, found: string, such: string): string =>
  `Line ${line}: found “${found}”. Write a line like “${such}”, and separate the columns with a tab, comma or space.`;
export const likeInAddress = (such: string): string => `like ${such}`;
export const wrongAddress = (found: string, spelling: string): string => `“${found}” in the address is not ${spelling}.`;

export const tooManyNumbers = (most: number, found: string): string => `The list takes ${most} numbers at most, and these are ${found}.`;
export const commaList = (word: string, row: number, found: string, mark: '.' | ','): string =>
  `${word} ${row}: “${found}” can be read two ways. Write one number per line, with a ${mark === '.' ? 'point' : 'comma'} for decimals.`;
