/** The name of a hive that its reader gave none. */
export const hive = (number: number): string => `Hive ${number}`;
/** What differs in two records. */
export const yardsAddress = 'the yard’s address';
export const dayOf = (list: string): string => `${list}, day`;
