import type * as English from './text.en.ts';

export const today = 'Hoy';
export const inACalendar: typeof English.inACalendar = (label) => `${label}: elegir en un calendario`;

export const counted = 'Lo que se contó';
export const firstColony = 'Colonia 1';
export const colony = 'Colonia';
export const mites = 'Ácaros';
export const bees = 'Abejas';
export const removeFirst = 'Quitar colonia 1';
export const addColony = 'Agregar una colonia';
export const pasteList = 'Pegar una lista';
export const fromSpreadsheet = 'De una hoja de cálculo: colonia, ácaros, abejas';
export const listHint =
  'Una línea por colonia, por ejemplo A 12 300. Separe las columnas con un tabulador, una coma o un espacio. Los nombres son opcionales.';
