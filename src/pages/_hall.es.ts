import type * as English from './_hall.en.ts';

export const title = 'Pantalla para la sala';
export const shown: typeof English.shown = {
  'lists/': 'Una lista, paso por paso',
  'pests/': 'Un problema y lo que se le parece',
  'work-it-out/mite-count/': 'Un conteo de ácaros, escrito aquí',
  'work-it-out/count-day/': 'Los conteos de la reunión',
};
export const largeScreen = 'En un proyector o una pantalla grande, esta página llena la pared.';
export const noScript = 'Sin su programa, esta página no puede saber el día, y una página no se puede mostrar parte por parte.';
export const show = 'Mostrar';
export const nextMeeting = 'Próxima reunión';
export const onYourPhone = 'En su teléfono';
