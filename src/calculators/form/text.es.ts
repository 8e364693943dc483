import type * as English from './text.en.ts';

export const noResult: typeof English.noResult = (problems) => `Todavía no hay resultado. ${thereAre(problems)}.`;
export const thereAre: typeof English.thereAre = (problems) => (problems === 1 ? 'Hay 1 problema' : `Hay ${problems} problemas`);
export const use: typeof English.use = (fix) => `Usar ${fix}`;

export const copied = 'Copiado';
export const copyFromBar = 'Cópielo de la barra de direcciones';
export const unknownInLink: typeof English.unknownInLink = (names) => `El enlace nombra algo que este formulario no tiene: ${names}.`;
export const twiceInLink: typeof English.twiceInLink = (names) => `El enlace da esto más de una vez, y vale lo primero: ${names}.`;

export const inAnAddress: typeof English.inAnAddress = (written) =>
  `En una dirección esto se escribe ${written}. Presione “Calcular” para usarlo.`;
export const choose: typeof English.choose = (what) => `Elija ${what}.`;
export const noChoice: typeof English.noChoice = (found) => `“${found}” no es una de las opciones.`;

export const write: typeof English.write = (what) => `Escriba ${what}.`;
export const twoWays: typeof English.twoWays = (found, one, other) => `“${found}” se puede leer de dos maneras. Escriba ${one} o ${other}.`;
export const thousandsMark: typeof English.thousandsMark = (found) => `Escriba “${found}” sin signos entre los miles.`;
export const twoNumbers: typeof English.twoNumbers = (found) => `“${found}” es más de un número. Escriba uno solo.`;
export const tooManyDigits: typeof English.tooManyDigits = (found) => `“${found}” tiene demasiadas cifras.`;
export const unknownUnit: typeof English.unknownUnit = (found, what) =>
  `“${found}” no se puede leer aquí. Escriba ${what}, solo el número.`;
export const notWhole: typeof English.notWhole = (found, what) => `“${found}” no es un número entero. Escriba ${what}.`;
export const underZero: typeof English.underZero = (found, what) => `“${found}” es menor que 0. Escriba ${what}.`;
export const notANumber: typeof English.notANumber = (found, what) => `“${found}” no es un número. Escriba ${what}.`;
