import type * as English from './page-words.en.ts';

export const words: typeof English.words = {
  doNow: 'Haga esto ahora',
  whatNext: 'Lo que sigue',
  somethingWrong: '¿Algo va mal?',
  tableOf: (heads) => `Tabla: ${heads.join(', ')}`,
};
