export const title = 'What blooms when';
export const lead = (district: string): string => `The plants that bees use, in the order in which they flower in ${district}.`;
/** What bees get of a plant. */
export const gives = (what: readonly ('pollen' | 'nectar' | 'honeydew')[]): string => `for ${what.join(', ')}`;
/** `stage` is in the middle of a sentence elsewhere: "in bloom". */
export const stageHead = (stage: string): string => `${stage.charAt(0).toUpperCase()}${stage.slice(1)}:`;
export const withoutDate = 'Without a date here';
export const howCounted =
  'A plant’s sum of degree-days is only counted by the method, base and first day of its own list. The days are those of a normal year: sun, slope and variety move them, and so does every single year.';
