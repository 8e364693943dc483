import type * as English from './dated.en.ts';

export const notWithThisStart = 'no con este comienzo';
export const groups: typeof English.groups = {
  'past-due': 'Con atraso',
  'this-week': 'Esta semana',
  'next-week': 'La próxima semana',
  later: 'Más adelante',
  earlier: 'Antes',
};
