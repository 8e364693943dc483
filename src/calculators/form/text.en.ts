/* Words of every calculator's form. `what` is what to write, as in "Write how many bees were in the sample." `found` is what was typed. */

export const noResult = (problems: number): string => `No result yet. ${thereAre(problems)}.`;
export const thereAre = (problems: number): string => (problems === 1 ? 'There is 1 problem' : `There are ${problems} problems`);
export const use = (fix: string): string => `Use ${fix}`;

export const copied = 'Copied';
export const copyFromBar = 'Copy it from the address bar';
export const unknownInLink = (names: string): string => `The link names something that this form does not have: ${names}.`;
export const twiceInLink = (names: string): string => `The link gives these more than once, and the first one counts: ${names}.`;

export const inAnAddress = (written: string): string => `In an address this is written ${written}. Press “Calculate” to use it.`;
export const choose = (what: string): string => `Choose ${what}.`;
export const noChoice = (found: string): string => `“${found}” is not one of the choices.`;

export const write = (what: string): string => `Write ${what}.`;
export const twoWays = (found: string, one: string, other: string): string => `“${found}” can be read two ways. Write ${one}, or ${other}.`;
export const thousandsMark = (found: string): string => `Write “${found}” without marks between the thousands.`;
export const twoNumbers = (found: string): string => `“${found}” is more than one number. Write one.`;
export const tooManyDigits = (found: string): string => `“${found}” has too many digits.`;
export const unknownUnit = (found: string, what: string): string => `“${found}” cannot be read here. Write ${what}, as a number alone.`;
export const notWhole = (found: string, what: string): string => `“${found}” is not a whole number. Write ${what}.`;
export const underZero = (found: string, what: string): string => `“${found}” is under 0. Write ${what}.`;
export const notANumber = (found: string, what: string): string => `“${found}” is not a number. Write ${what}.`;
