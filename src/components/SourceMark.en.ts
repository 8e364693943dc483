export const source = (note: number): string => `Source ${note}`;
