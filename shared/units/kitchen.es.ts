import type * as English from './kitchen.en.ts';

const UNITS = {
  gallon: ['galón', 'galones', 'un'],
  quart: ['cuarto de galón', 'cuartos de galón', 'un'],
  cup: ['taza', 'tazas', 'una'],
  tablespoon: ['cucharada', 'cucharadas', 'una'],
  lb: ['lb', 'lb', '1'],
  oz: ['oz', 'oz', '1'],
  L: ['L', 'L', '1'],
  mL: ['mL', 'mL', '1'],
  kg: ['kg', 'kg', '1'],
  g: ['g', 'g', '1'],
} as const satisfies Record<English.KitchenUnit, readonly string[]>;

export const halfGallon: typeof English.halfGallon = 'medio galón';

export const amountWords: typeof English.amountWords = (shown, unit, isMany) => `${shown} ${UNITS[unit][isMany ? 1 : 0]}`;
export const oneOf: typeof English.oneOf = (unit) => `${UNITS[unit][2]} ${UNITS[unit][0]}`;
export const about: typeof English.about = (amount) => `cerca de ${amount}`;
export const aboutBetween: typeof English.aboutBetween = (least, most) => `entre ${least} y ${most}, más o menos`;
