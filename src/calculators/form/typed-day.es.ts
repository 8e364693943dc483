import type * as English from './typed-day.en.ts';

export const write: typeof English.write = (what, such) => `Escriba ${what}, por ejemplo ${such}.`;
export const wrongWeekday: typeof English.wrongWeekday = (found) => `“${found}”: esa fecha no cae en ese día de la semana.`;
export const notInCalendar: typeof English.notInCalendar = (found) => `“${found}” no existe en el calendario.`;
export const yearOutOfRange: typeof English.yearOutOfRange = (found) => `“${found}”: escriba un año entre 1900 y 2199.`;
export const notADate: typeof English.notADate = (found, such) => `“${found}” no es una fecha. Escríbala como ${such}.`;
