import type * as English from './withdrawn.en.ts';

export const kinds: Record<keyof typeof English.kinds, string> = {
  checklists: 'lista',
  bulletins: 'boletín',
  articles: 'cómo se hace',
  meetings: 'reunión',
  reading: 'lectura',
  treatments: 'tratamiento',
  forage: 'planta para las abejas',
  words: 'palabra',
  answers: 'respuesta',
  figures: 'cifra',
  local: 'texto de este lugar',
  sources: 'fuente',
  cautions: 'recuadro',
  sheets: 'hoja',
  signs: 'señal',
  notices: 'anuncio',
  counts: 'conteos',
  drawings: 'dibujo',
  files: 'archivo',
};
