import type * as English from './rows.en.ts';

export const numbered: typeof English.numbered = (word, at) => `${word} ${at}`;
export const inRow: typeof English.inRow = (word, at, says) => `${word} ${at}: ${says}`;
export const remove: typeof English.remove = (word, at) => `Quitar ${word.toLowerCase()} ${at}`;
export const tooManyRows: typeof English.tooManyRows = (most, found) =>
  `El formulario acepta como máximo ${most} filas, y estas son ${found}.`;
export const wrongLine: typeof English.wrongLine = (line, found, such) =>
  `Línea ${line}: dice “${found}”. Escriba una línea como “${such}” y separe las columnas con un tabulador, una coma o un espacio.`;
export const likeInAddress: typeof English.likeInAddress = (such) => `como ${such}`;
export const wrongAddress: typeof English.wrongAddress = (found, spelling) => `“${found}” en la dirección no es ${spelling}.`;

export const tooManyNumbers: typeof English.tooManyNumbers = (most, found) =>
  `La lista acepta como máximo ${most} números, y estos son ${found}.`;
export const commaList: typeof English.commaList = (word, row, found, mark) =>
  `${word} ${row}: “${found}” se puede leer de dos maneras. Escriba un número por línea, con ${mark === '.' ? 'punto' : 'coma'} para los decimales.`;
