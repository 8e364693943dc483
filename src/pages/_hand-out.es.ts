import type * as English from './_hand-out.en.ts';

export const title = 'Hojas para repartir';
export const lead =
  'Elija páginas para una clase o una reunión. Imprímalas como un juego de hojas, o guárdelas en un solo archivo para un teléfono o un lector de libros.';
export const noScript =
  'Para elegir páginas hace falta el programa de la página, y en este navegador está apagado. Cada página también se imprime sola, con sus reglas de seguridad y su dirección.';
export const book = 'El libro tiene todas las páginas en un archivo';
export const almanac: typeof English.almanac = (name, isDemo) => `${name}${isDemo ? ' (demostración)' : ''}`;
export const editionOf: typeof English.editionOf = (edition) => `edición del ${edition}`;
export const yourPages = 'Sus páginas';
export const none =
  'Todavía ninguna. Elíjalas de las listas de abajo. Quedan en la dirección de esta página, y así puede enviarla como enlace.';
export const setTitle = 'Título';
export const apart = 'Empezar cada página en una hoja nueva';
export const print = 'Imprimir';
export const epub = 'Guardar como EPUB';
export const copy = 'Copiar el enlace';
export const choose = 'Elija páginas';
export const filter = 'Filtrar por título';
export const goToYours = 'Ir a sus páginas';
export const up = 'Subir';
export const down = 'Bajar';
export const remove = 'Quitar';
export const sheets = 'Hojas para repartir';
