import type * as English from './messages.en.ts';

export const saving: typeof English.saving = (done, all) => `Guardando para usar sin conexión: ${done} de ${all} archivos.`;
export const saved: typeof English.saved = (pages, size, edition, left, pictures) =>
  `Disponible sin conexión: todas las ${pages} páginas, la búsqueda y los calendarios, ${size}, edición del ${edition}.${left > 0 ? ` ${left} de ${pictures} imágenes no están guardadas; sus palabras sí.` : ''}`;
export const notSaved =
  'La copia sin conexión no está completa. Un archivo no llegó como debía, o no hay espacio en este dispositivo. La próxima visita sigue desde aquí.';
export const newEdition: typeof English.newEdition = (edition) =>
  `Una edición nueva, del ${edition}, está guardada en este dispositivo. Esta página es de otra.`;
export const showIt = 'Mostrarla';
const old = (days: number): string => ` Tiene más de ${days} días: pregunte antes de confiar en un número.`;
export const isSaved: typeof English.isSaved = (edition, days) =>
  `Sin señal: esta es la edición guardada, del ${edition}.${days ? old(days) : ''}`;
export const isAsSeen: typeof English.isAsSeen = (edition, days) =>
  `Sin señal: esta página está como usted la vio la última vez, y es más nueva que la edición guardada, del ${edition}.${days ? old(days) : ''}`;
