import type * as English from './DueRows.en.ts';

export const sections: typeof English.sections = {
  begun: { heading: 'Sus listas', all: '' },
  due: { heading: 'Para esta semana', all: 'Todas las listas' },
  out: { heading: 'Esté atento a', all: 'Todos los problemas' },
  read: { heading: 'Preguntas de esta semana', all: 'Todos los artículos' },
};
