import type * as English from './hand-out.en.ts';

export const title: typeof English.title = (meeting) => (meeting ? `Hojas para repartir: ${meeting}` : 'Hojas para repartir');
export const loading = 'Cargando…';
export const button: typeof English.button = (does, page) => `${does}: ${page}`;
export const moved: typeof English.moved = (page) => `${page} tiene ahora otra dirección.`;
export const removed: typeof English.removed = (page) => `Se quitó: ${page}.`;
export const loadingPages = 'Cargando las páginas…';
export const lacking: typeof English.lacking = (pages, all) =>
  `No se pudieron cargar ${pages} de ${all} páginas. La primera hoja dice cuáles.`;
export const makingFile = 'Preparando el archivo…';
export const noFile = 'No se pudo cargar ninguna página, así que no hay archivo. La lista de arriba dice qué hacer.';
export const fileName = 'hojas';
export const fileSaved: typeof English.fileSaved = (without, all) =>
  without === 0
    ? 'El archivo está guardado. Ábralo en un teléfono o en un lector de libros.'
    : `El archivo está guardado sin ${without} de ${all} páginas. La lista de arriba dice por qué.`;
export const copied = 'El enlace está copiado. Abre esta selección en cualquier dispositivo.';
export const copyThis: typeof English.copyThis = (link) => `Copie este enlace: ${link}`;
export const isNumber: typeof English.isNumber = (page, at, all) => `${page} es ahora el número ${at} de ${all}.`;
export const found: typeof English.found = (pages) => (pages === 1 ? '1 página' : `${pages} páginas`);
export const dueNow = 'Toca ahora';
export const past: typeof English.past = (words) => `Ya pasó: ${words}`;
export const leftOut: typeof English.leftOut = (addresses) =>
  `Ninguna página tiene la dirección ${addresses.join(', ')}, así que no se incluye. Elíjala de las listas de abajo.`;
