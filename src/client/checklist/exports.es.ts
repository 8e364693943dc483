import type * as English from './exports.en.ts';

export const giveDay = 'Primero dele su día a la lista. Las fechas de los pasos se cuentan desde ese día.';
export const noDates = 'Ninguno de los pasos que faltan tiene una fecha de hoy en adelante.';
export const savedCalendar: typeof English.savedCalendar = (name, events, late) =>
  [
    `Se guardó como ${name}. Abra el archivo para agregar ${events === 1 ? '1 evento' : `${events} eventos`} a su calendario.`,
    late > 0 ? (late === 1 ? '1 paso tiene atraso y no se incluyó.' : `${late} pasos tienen atraso y no se incluyeron.`) : '',
  ].join(' ');
export const savedAs: typeof English.savedAs = (name) => `Se guardó como ${name}.`;
