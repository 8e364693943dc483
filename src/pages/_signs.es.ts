import type * as English from './_signs.en.ts';

export const title = 'Empiece por las señales';
export const lead = 'Marque lo que ve. Recibe qué revisar después, cómo distinguirlo de lo que se le parece y a quién llamar.';
export const partOfYear = 'Época del año';
export const notChosen = 'Sin elegir';
export const show = 'Mostrar qué revisar';
export const clear = 'Borrar';
export const toCheck = 'Qué revisar';
export const canMiss: typeof English.canMiss = (who) =>
  `**Esta lista puede pasar cosas por alto.** Si la cría se ve mal o huele mal, cierre la colmena, deje allí las herramientas y llame a ${who}{number}.`;
export const canMissAsk =
  '**Esta lista puede pasar cosas por alto.** Si la cría se ve mal o huele mal, cierre la colmena, deje allí las herramientas y [pregunte](who-to-ask).';
export const all = 'Todos los problemas con sus señales';
export const key = 'Una clave: busque la señal arriba y después el problema abajo.';
