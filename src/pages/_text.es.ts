import type * as English from './_text.en.ts';

export const noPage: typeof English.noPage = {
  title: 'No hay ninguna página en esta dirección',
  lead: 'Puede ser que haya cambiado de lugar o que se haya retirado. También puede ser que la dirección esté mal escrita.',
  searchThe: 'Buscar en el almanaque',
  search: 'Buscar',
  goTo: '[Vaya a la primera página](first), o [vea a quién llamar](who).',
};

export const moved: typeof English.moved = {
  title: (title) => `Cambió de lugar: ${title}`,
  lead: (title) => `Esta página tiene ahora otra dirección. [Vaya a “${title}”](there).`,
};

export const gone: typeof English.gone = {
  title: (title) => `Página retirada: ${title}`,
  lead: (day) => `Esta página se retiró el ${day}. No siga ninguna copia de ella.`,
  why: 'Por qué',
  haveACopy: '¿Tiene usted una copia?',
  throwAway:
    'Tire lo que imprimió o guardó antes de ese día. Pregunte antes de usarlo. [Todo lo que se retiró](all) está en una sola lista.',
};

export const withdrawn: typeof English.withdrawn = {
  title: 'Páginas retiradas',
  lead: 'Qué se retiró, desde cuándo, por qué, y a quién preguntar. Tire las copias anteriores a ese día.',
  line: (day, why, who) => `${day}: ${why} Pregunte a: ${who}.`,
};

export const notices: typeof English.notices = {
  title: 'Anuncios temporales',
  lead: 'Valen solo para ciertos días. Cada uno está también arriba en las páginas a las que se refiere.',
  none: 'Hoy no hay ningún anuncio, hasta donde sabe esta edición. No tiene noticias posteriores a su propio día.',
};

export const words: typeof English.words = {
  title: 'Palabras',
  lead: 'Las palabras del oficio en palabras sencillas, y las formas en que la gente las escribe.',
  inBritain: (word) => `en Gran Bretaña: ${word}`,
  more: 'Más',
  moreOn: (word) => `sobre ${word}`,
};
