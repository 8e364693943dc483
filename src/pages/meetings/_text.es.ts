import type * as English from './_text.en.ts';

export const title = 'Reuniones';
export const lead: typeof English.lead = (timeZone) => `Días y horas según el reloj de la sala (${timeZone}).`;
export const calendarFile = 'Archivo de calendario de todas las reuniones';
export const blankSheets = 'Hojas en blanco para imprimir para una reunión';
export const past = 'Reuniones pasadas';
export const calledOff = 'Cancelada';
export const calledOffBecause: typeof English.calledOffBecause = (why) => `**Cancelada.** ${why}`;
export const saidOn: typeof English.saidOn = (day) => `Se dijo el ${day}.`;
export const byTheClock = '{time}, según el reloj de la sala.';
export const calledOffBy: typeof English.calledOffBy = (who) =>
  `Si se cancela, se avisa así: ${who}. Una copia sin conexión no puede saberlo.`;
export const addToCalendar = 'Agregar a mi calendario';
export const learned = 'Qué aprendimos';
export const bring = 'Traiga';
export const printAndBring = 'Imprima y traiga';
export const readBefore = 'Lea antes';
export const handOut = 'Hojas para repartir de esta reunión';
