import type * as English from './hall.en.ts';

export const hallScreen = 'Pantalla para la sala';
export const hall = 'Sala';
export const place: typeof English.place = (at, all) => `${at} de ${all}`;
export const back = 'Atrás';
export const forward = 'Adelante';
export const light = 'Oscuro o claro';
export const code = 'Código para teléfonos';
export const leave = 'Salir de la sala';
export const tooLong = 'La dirección es demasiado larga para un código.';
export const close = 'Cerrar';
