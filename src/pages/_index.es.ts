export const lookingFor = '¿Qué busca?';
export const search = 'Buscar';
export const withoutScript = 'Sin su programa, esta página no puede saber qué día es. [El año completo](year) muestra todo en orden.';
export const nextMeeting = 'Próxima reunión';
export const addToCalendar = 'Agregar a mi calendario';
export const inBloom = 'En flor';
export const whatBlooms = 'Qué florece y cuándo';
export const notABeekeeper = '¿No es apicultor?';
export const passersBy = {
  'swarm-on-a-tree': ['Un enjambre en su jardín', 'No se acerque, y llame a la asociación.'],
  stings: ['Una abeja picó a alguien', 'Qué hacer, en orden.'],
  'bees-in-a-wall': ['Abejas en una pared o una chimenea', 'No tape el agujero. No encienda fuego.'],
} as const;
