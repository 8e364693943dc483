import type * as English from './text.en.ts';

export const done = 'Terminado';
export const next = 'Sigue: {title}';
export const start = 'Empezar';
export const allDone = 'Todos los pasos están marcados.';

export const thisChecklist = 'Esta lista';
export const forHive = 'Para';
export const firstHive = 'Colmena 1';
export const addHive = 'Agregar una colmena';

export const suchDay: typeof English.suchDay = (day) => `Por ejemplo, ${day}. Así cada paso tiene su fecha.`;
export const queen: typeof English.queen = { asks: 'La reina', candy: 'en su jaula', released: 'suelta desde el principio' };
export const comb: typeof English.comb = { asks: 'Los cuadros', drawn: 'panal construido', foundation: 'solo cera estampada' };

export const setAside = 'Quitar los datos que no se pueden leer';

export const share: typeof English.share = {
  share: 'Compartir',
  print: 'Imprimir',
  calendar: { before: 'Agregar al ', shown: 'Calendario' },
  panel: 'Compartir esta lista',
  travels: 'Sus marcas y sus fechas viajan en el enlace. Nada se guarda en internet.',
  extras: 'Enviar también el nombre de la colmena y mis notas',
  send: 'Enviar',
  copy: 'Copiar el enlace',
  code: 'Mostrar el código QR',
};

export const tools: typeof English.tools = {
  more: 'Más para esta colmena',
  notes: 'Escribir notas',
  rename: 'Cambiar el nombre de esta colmena',
  startOver: 'Empezar de nuevo',
  file: 'Guardar en el historial',
  screen: 'Mantener la pantalla encendida',
  yard: 'La dirección del apiario, para leerla en voz alta al pedir ayuda',
  yardHint: 'Camino, número o portón, y el cruce más cercano. Si tiene dos apiarios, escriba los dos, cada uno con su nombre.',
  kept: 'Sus marcas y la dirección del apiario se quedan en este navegador, en este dispositivo. Algunos navegadores las borran si usted no abre el sitio durante una semana. Guárdelas en un archivo.',
  files: 'Guardar en un archivo',
  saveAll: 'Guardar todas las listas en un archivo',
  saveTable: 'Guardar esta lista como tabla (CSV)',
  open: 'Abrir un archivo guardado',
};
