/** A step in a table, by its id. */
export const noLongerHere = (step: string): string => `${step} (no longer in this checklist)`;
