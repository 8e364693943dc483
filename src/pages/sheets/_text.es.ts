import type * as English from './_text.en.ts';

export const title = 'Hojas para llenar';
export const lead =
  'Hojas en blanco, cada una de un solo papel. Lo que usted escribe se queda en el papel: este sitio no guarda nada de eso.';
export const print = 'Imprimir la hoja';
export const onceMore: typeof English.onceMore = (title) => `${title}, otra vez`;
export const table: typeof English.table = (title) => `La tabla de la hoja: ${title}`;
export const tableOnceMore: typeof English.tableOnceMore = (title) => `La tabla de la hoja: ${title}, otra vez`;
export const preview: typeof English.preview = (lines) =>
  `Una vista pequeña. La hoja impresa tiene ${lines} líneas, con altura para escribir a mano.`;
export const previewOfTwo: typeof English.previewOfTwo = (lines) =>
  `Una vista pequeña. La hoja impresa tiene ${lines} líneas en cada una de dos tarjetas, con altura para escribir a mano.`;
export const seeAlso = 'Vea también';
export const seeAlsoThese = 'Vea también: {pages}.';
