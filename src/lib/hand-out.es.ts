import type * as English from './hand-out.en.ts';

export const kinds: typeof English.kinds = {
  lists: 'Listas',
  pests: 'Plagas y enfermedades',
  treatments: 'Tratamientos',
  articles: 'Cómo se hace',
  meetings: 'Reuniones',
  calculators: 'Calculadoras: ejemplos y tablas',
};
