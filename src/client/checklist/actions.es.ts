import type * as English from './actions.en.ts';

export const allIsWell = 'Aquí todo está bien.';

export const nowFor: typeof English.nowFor = (hive) => `Esta lista es ahora para ${hive}. Puede cambiarle el nombre en «Más».`;
export const askName = 'Un nombre para esta colmena, por ejemplo «colmena verde»:';
export const askFile = '¿Guardar esta lista en el historial? Podrá leerla todavía, y se abre una nueva para la misma colmena.';
export const askStartOver = '¿Borrar todas las marcas y las notas de esta colmena? Las otras colmenas y listas conservan las suyas.';
export const putAside = 'Lo que no se pudo leer se puso aparte, no se borró. Las marcas se guardan otra vez.';
export const noRoom = 'En este navegador no hay espacio para ponerlo aparte. No se cambió nada.';
export const savedAs: typeof English.savedAs = (name) => `Se guardó como ${name}.`;

export const theDay = 'el día';
export const datesCount: typeof English.datesCount = (day) => `Las fechas se cuentan desde el ${day}. Las marcas se quedan.`;
export const addressStands = 'La dirección está junto al número de emergencias en todas las listas.';
export const noAddress = 'Ahora no se guarda ninguna dirección.';

export const notesOn = 'Ahora cada paso tiene un botón para una nota.';
export const addNote = 'Agregar una nota';
export const changeNote = 'Cambiar la nota';
export const addNoteOn: typeof English.addNoteOn = (step) => `Agregar una nota sobre: ${step}`;
export const changeNoteOn: typeof English.changeNoteOn = (step) => `Cambiar la nota sobre: ${step}`;
export const noteOn: typeof English.noteOn = (step) => `Nota sobre: ${step}`;
export const note = 'Nota';

export const wrongFile: typeof English.wrongFile = {
  'not-a-record': 'Ese archivo no contiene marcas de este almanaque.',
  newer: 'Ese archivo se guardó con una edición más nueva. Primero vuelva a cargar esta página.',
  'other-club': 'Ese archivo es de otra asociación.',
};
const count = (number: number, one: string): string => `${number} ${one}${number === 1 ? '' : 's'}`;
export const fileAdds: typeof English.fileAdds = (saved, ticks, notes, hives, clashes) => {
  const file = saved ? `El archivo que se guardó el ${saved}` : 'El archivo';
  const added = [count(ticks, 'marca'), count(notes, 'nota'), count(hives, 'colmena')].join(', ');
  return `${file} agrega ${added}.${clashes.length > 0 ? ` Donde los dos difieren, queda lo de usted: ${clashes.join('; ')}.` : ''} `;
};
export const use = 'Usarlo aquí';
export const notNow = 'Ahora no';
export const isHere = 'Ya está en este dispositivo.';
export const unchanged = 'No se cambió nada.';
