import type * as English from './say-more.en.ts';

export const isFiled = 'Esta lista está en su historial. Puede leerla, pero no cambiarla.';
export const isPaused = 'La lista espera su respuesta.';
export const gone: typeof English.gone = (ticks) => `Marcas de pasos que ya no están en esta lista: ${ticks}.`;
export const trouble: typeof English.trouble = {
  blocked: 'Este navegador no guarda esta página. Sus marcas duran hasta que usted salga de ella.',
  full: 'En este navegador ya no hay espacio. Sus marcas duran hasta que usted salga de esta página. Guárdelas en un archivo.',
  damaged: 'Las marcas guardadas no se pueden leer. Quedan como están. Las marcas nuevas duran hasta que usted salga de esta página.',
  newer:
    'Las marcas guardadas vienen de una edición más nueva. Quedan como están. Las marcas nuevas duran hasta que usted salga de esta página.',
};
