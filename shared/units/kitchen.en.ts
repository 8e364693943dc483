/** The units of kitchen measures, for one and for many. */
const UNITS = {
  gallon: ['gallon', 'gallons'],
  quart: ['quart', 'quarts'],
  cup: ['cup', 'cups'],
  tablespoon: ['tablespoon', 'tablespoons'],
  lb: ['lb', 'lb'],
  oz: ['oz', 'oz'],
  L: ['L', 'L'],
  mL: ['mL', 'mL'],
  kg: ['kg', 'kg'],
  g: ['g', 'g'],
} as const;
export type KitchenUnit = keyof typeof UNITS;

export const halfGallon: string = 'half a gallon';

/** "7 cups", "½ cup". `isMany`: more than one. */
export const amountWords = (shown: string, unit: KitchenUnit, isMany: boolean): string => `${shown} ${UNITS[unit][isMany ? 1 : 0]}`;
/** "a cup". */
export const oneOf = (unit: KitchenUnit): string => (UNITS[unit][0] === UNITS[unit][1] ? `1 ${UNITS[unit][0]}` : `a ${UNITS[unit][0]}`);
export const about = (amount: string): string => `about ${amount}`;
/** "about 1½ to 2 gallons", "about 3 cups to a quart". */
export const aboutBetween = (least: string, most: string): string => `about ${least} to ${most}`;
