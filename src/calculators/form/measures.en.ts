/* Measures in words. The values are written already. */
export const usGallons = (value: string): string => `${value} US gal`;
export const imperialGallons = (value: string): string => `${value} imperial gal`;
export const poundsInGallon = (value: string): string => `${value} lb in a US gallon`;
export const kilogramsInLitre = (value: string): string => `${value} kg in a litre`;
export const poundsAGallon = (value: string): string => `${value} lb a US gallon`;
export const kilogramsALitre = (value: string): string => `${value} kg a litre`;
export const fromTo = (least: string, most: string): string => `${least} to ${most}`;
