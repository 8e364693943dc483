import type * as English from './PestCard.en.ts';

export const fieldTest = '**Prueba en el apiario:** {test}';
export const wholeTest = 'La prueba completa';
export const wholeTestFor = 'de {trouble}';
export const looksLikeIt = '**Se le parece:** {others}.';
export const closeAndCall = '**Cierre la colmena, deje allí las herramientas y llame:** {who}.';
export const ask = '**Pregunte:** {who}.';
export const closeAndReport = '**Cierre la colmena, deje allí las herramientas y repórtelo** como pide la ley de aquí.';
export const itsSigns = 'Sus señales';
export const neverFits: typeof English.neverFits = (sign) => `${sign}: nunca, así que no coincide`;
export const shows: typeof English.shows = (sign, strength, often) => `${sign}: ${strength}, ${often}`;
export const readMore = 'Lea más sobre {trouble}';
