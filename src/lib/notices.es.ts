import type * as English from './notices.en.ts';

export const kinds: typeof English.kinds = {
  disease: 'Enfermedad cerca',
  recall: 'Producto retirado',
  'called off': 'Cancelado',
  law: 'Regla nueva',
  other: 'Anuncio',
};
