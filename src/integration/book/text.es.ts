import type * as English from './text.en.ts';

export const edition: typeof English.edition = (name) => `edición del ${name}`;
export const part: typeof English.part = (number) => `Parte ${number}`;
export const contents = 'Contenido';
export const sources = 'Fuentes';
export const landmarks = { title: 'Título', firstPart: 'Primera parte' };
export const parts = 'Partes del libro';
export const emergency = 'Emergencia';
export const emergencyFirst = 'Emergencia: ';

export const front: typeof English.front = {
  book: (edition) => `El libro, ${edition}`,
  demonstration: 'Una demostración: esta asociación no existe.',
  madeUp: 'Su condado, sus fechas y los números de sus oficinas son inventados.',
  whoDecides: 'Deciden la etiqueta, el inspector apícola, el servicio de extensión y su médico; este libro no.',
  days: (district) => `Los días son los que valen en ${district}.`,
  daysElsewhere: (district) =>
    `Los días son los que valen en ${district}; donde son otros en otra parte, esos días siguen entre paréntesis.`,
  marks: 'Los números elevados llevan a las fuentes, al final. Un anuncio vale solo en sus días.',
  onlyLive: 'Los formularios que calculan con sus propios números, y el buscador, están solo en las páginas de la asociación.',
  newerAt: (edition) =>
    `Esta copia no cambia. Los errores que se encontraron después de la edición del ${edition} no están corregidos en ella: busque una más nueva en {address}.`,
  newer: (edition) =>
    `Esta copia no cambia. Los errores que se encontraron después de la edición del ${edition} no están corregidos en ella: pida una más nueva a la asociación.`,
};

export const source: typeof English.source = (number) => `Fuente ${number}`;
export const sourceInRow: typeof English.sourceInRow = (number, rest) => `. Fuente ${number}. ${rest} `;
export const asSource: typeof English.asSource = (number, rest) => `Como la ${number}. ${rest}`;
export const noAddress: typeof English.noAddress = (words) => `${words} (no se encontró una dirección abierta)`;
export const opened: typeof English.opened = (day) => ` (visto el ${day})`;
export const numbers = 'números ';

export const drawnUnder = 'El dibujo está en {page}.';
export const table = /^Tabla: /;
export const publishedBy = /^Publicad[oa] por/;

export const sheetOf = 'counter(page) " de " counter(pages)';
