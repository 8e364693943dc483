import type * as English from './source-note.en.ts';

export const source: typeof English.source = (number) => `Fuente ${number}`;
export const close = 'Cerrar';
