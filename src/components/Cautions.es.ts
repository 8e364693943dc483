import type * as English from './Cautions.en.ts';

export const ifItHappens = 'Si ocurre';
export const beforeYouOpen = 'Antes de abrir una colmena';
export const more = 'Más';
export const moreOn: typeof English.moreOn = (heading) => `sobre: ${heading}`;

const decides = { label: 'la etiqueta', extension: 'el servicio de extensión', regulator: 'la autoridad', doctor: 'un médico' } as const;

export const inTheEnd: typeof English.inTheEnd = (who) =>
  `Al final ${who.length > 1 ? 'deciden' : 'decide'} ${new Intl.ListFormat('es', { type: 'conjunction' }).format(who.map((each) => decides[each]))}.`;
