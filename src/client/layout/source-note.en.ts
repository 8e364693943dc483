export const source = (number: string): string => `Source ${number}`;
export const close = 'Close';
