import type * as English from './measures.en.ts';

export const usGallons: typeof English.usGallons = (value) => `${value} gal EE. UU.`;
export const imperialGallons: typeof English.imperialGallons = (value) => `${value} gal imperiales`;
export const poundsInGallon: typeof English.poundsInGallon = (value) => `${value} lb en un galón EE. UU.`;
export const kilogramsInLitre: typeof English.kilogramsInLitre = (value) => `${value} kg en un litro`;
export const poundsAGallon: typeof English.poundsAGallon = (value) => `${value} lb por galón EE. UU.`;
export const kilogramsALitre: typeof English.kilogramsALitre = (value) => `${value} kg por litro`;
export const fromTo: typeof English.fromTo = (least, most) => `${least} a ${most}`;
