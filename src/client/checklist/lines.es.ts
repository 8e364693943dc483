import type * as English from './lines.en.ts';

export const newWords = 'Estas palabras cambiaron desde que usted marcó el paso.';
export const filed: typeof English.filed = (hive, day) => `${hive}, guardada el ${day}`;
export const isFor: typeof English.isFor = (hive) => `Esta lista es para ${hive}.`;
export const start: typeof English.start = (since) => (since ? `Empezar, ${since}` : 'Empezar');
