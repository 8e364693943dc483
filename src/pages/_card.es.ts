import type * as English from './_card.en.ts';

export const title = 'Tarjeta de bolsillo';
export const lead =
  'Una hoja, por los dos lados, doblada dos veces en ocho páginas pequeñas. Imprímala a tamaño real, volteada por el lado largo.';
export const fold =
  'Doble la mitad de arriba hacia atrás y después la mitad izquierda hacia atrás. Corte el doblez de arriba para abrirlo.';
export const print = 'Imprimir la tarjeta';

export const club: typeof English.club = (name) => `${name}. Edición del {edition}.`;
export const call = 'Llame al {number}';
export const yard = 'La dirección de mi apiario:';
export const gate = 'El portón y por dónde se entra:';
export const epinephrine = 'Quién lleva epinefrina (adrenalina):';
export const moreOnStings = 'Más sobre las picaduras';
export const whoToCall = 'A quién llamar';
export const work = 'El trabajo del año';

export const wash: typeof English.wash = (count) => `Ácaros en un lavado de ${count} abejas`;
export const mites = 'Ácaros';
export const per100 = 'Por cada 100';
export const range = 'Rango probable';
export const level: typeof English.level = (rate) => `Nivel ${rate}`;
export const allYear = 'todo el año';
export const noLevel = 'La asociación todavía no tiene un nivel.';
export const labelDecides = 'La etiqueta decide qué puede usar usted y cuándo.';

export const syrup: typeof English.syrup = (temperature) => `Jarabe a ${temperature}, primero el azúcar`;
export const mixes = 'Mezclas usuales';
export const mix = 'Mezcla';
export const sugar = 'Azúcar';
export const inGallon = 'En un galón EE. UU.';
export const inLitre = 'En un litro';
export const grainsBelow = 'Se cristaliza por debajo de';
export const noGrain = 'no se cristaliza';
export const feeding =
  'Solo azúcar blanco y agua limpia. Alimente dentro de la colmena, al anochecer. No dé jarabe mientras estén puestas las cajas para la cosecha.';

export const brood = 'La cría se ve mal';
export const close = 'Cierre la colmena, deje allí las herramientas y llame antes de mover nada.';
export const report = ' – avise a la autoridad';

export const counts = 'Mis conteos';
export const day = 'Día';
export const hive = 'Colmena';
export const bees = 'Abejas';
export const whoDecides = 'Deciden la etiqueta, el inspector apícola, el servicio de extensión y su médico, no esta tarjeta.';
export const numbers: typeof English.numbers = (almanac, edition, figures = 'la página Cifras') =>
  `${almanac}, edición del ${edition}. De dónde viene cada número: ${figures}.`;
