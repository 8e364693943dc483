import type * as English from './_text.en.ts';

export const title = 'Cifras';
export const lead =
  'Cada número que alguien puede corregir, una sola vez: el que usa esta asociación, y todas las fuentes una al lado de la otra.';
export const count: typeof English.count = (figures) => `${figures} ${figures === 1 ? 'cifra' : 'cifras'}`;
export const asTable = 'Todas las cifras en una tabla para descargar';
export const subjectTitle: typeof English.subjectTitle = (subject) => `Cifras: ${subject}`;
export const subjectLead =
  'Quién lo dice, para qué lugar, cómo se midió, desde cuándo y con qué seguridad. Donde las fuentes difieren, se muestran todas.';
export const noRowFor: typeof English.noRowFor = (land) => `no hay fila para ${place(land)}`;
export const noRowSentence: typeof English.noRowSentence = (land) => `No hay fila para ${place(land)}.`;
export const noneToday = 'ninguna fila vale hoy';
export const followedHere = 'la que se usa aquí';
export const inForce: typeof English.inForce = (days, sureness) => `Vale ${days}; ${sureness}.`;
export const elsewhere: typeof English.elsewhere = (rows) => `En otros lugares: ${rows === 1 ? 'una fila' : `${rows} filas`}`;
export const rows: typeof English.rows = (count) => `${count} filas.`;
export const whyThisOne = '**Por qué esta:** {because}';
export const checked: typeof English.checked = (day, by) => `Revisado el ${day} por: ${by}; próxima revisión: {next}.`;
export const all = 'Todas las cifras';

const names = new Intl.DisplayNames('es', { type: 'region' });
const place = (land = ''): string => (/^[A-Z]{2}/.test(land) ? (names.of(land.slice(0, 2)) ?? land) : 'este lugar');
