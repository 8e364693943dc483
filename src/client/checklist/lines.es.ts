import type * as English from './lines.en.ts';

export const newWords = 'Estas palabras cambiaron desde que usted marcó el paso.';
export const filed: typeof English.filed = (hive, day) => `${hive}, guardada el ${day}`;
export const isFor: typeof English.isFor = (hive) => `Esta lista es para ${hive}.`;
export const start: typeof English.start = (since) => (since ? `Empezar, ${since}` : 'Empezar');
export const count: typeof English.count = (done, all) => `${done} de ${all}`;

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
