import type * as English from './_search.en.ts';

export const title = 'Buscar';
export const lead = 'Todas las páginas del almanaque, por las palabras que contienen.';
export const label = 'Buscar en el almanaque';
export const placeholder = '¿Qué busca?';
export const search = 'Buscar';
export const noScript = 'Sin su programa, esta página no puede buscar. Las preguntas de abajo y las listas llevan a todas las páginas.';
export const bestAnswer = 'La mejor respuesta';
export const kindOfPage = 'Tipo de página';
export const timeOfYear = 'Época del año';
export const allYear = 'Todo el año';
export const theseWeeks = 'Estas semanas';
export const result = 'Resultado';
export const tryOneWord: typeof English.tryOneWord = {
  word: 'ácaros',
  says: 'Pruebe con una sola palabra sencilla para lo que ve, por ejemplo [ácaros](search). La [lista de palabras](words) tiene otros nombres de las cosas.',
};
export const nameOnBox = '¿Un nombre de una caja? [Busque el ingrediente activo en su etiqueta](label).';
export const common = 'Preguntas frecuentes';
export const askMember = '¿No lo encuentra? Pregunte a un miembro';
export const howToReach = 'Cómo hablar con esta persona';
export const everyone = 'Todos, por tarea';
export const rooms: typeof English.rooms = {
  'lists/': 'Listas',
  'pests/': 'Problemas',
  'know-how/': 'Artículos',
  'work-it-out/': 'Calculadoras',
  'meetings/': 'Reuniones',
  'words/': 'Lista de palabras',
};
export const allPages = 'Todas las páginas, de la A a la Z';
