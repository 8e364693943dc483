import type * as English from './_about.en.ts';

export const title = 'Cómo se revisa este almanaque';
export const lead: typeof English.lead = (edition, club, place) => `Edición del ${edition}, publicada por ${club}, ${place}.`;
export const whoWrote = 'Quién escribió estas páginas';
export const sharedBooks =
  'Muchas asociaciones comparten un libro. Sus editores revisaron cada página el día que la página dice. Si nosotros mismos comparamos una página con sus fuentes, la página lo dice también.';
export const howSure = 'Qué tan segura es una cifra';
export const whereDates = 'De dónde vienen las fechas';
export const howDates =
  'Un día que viene de las fechas de los socios es el del medio de tres años o más; probables son los días entre el más temprano y el más tardío de esos años, y por lo menos diez días antes y después si hay menos de cinco años. Un día que viene de las normales mensuales es el de un año normal.';
export const pastCheck = 'Páginas con la revisión atrasada';
export const noneDue = 'Ninguna en el día de esta edición.';
export const wasDue: typeof English.wasDue = (day, by) => `{page}: debía revisarse el ${day} (${by})`;
export const mistake = '¿Un error?';
export const writeTo: typeof English.writeTo = (address) =>
  `Escriba a [${address}](mail). Diga en qué página está, qué dice la página y qué encontró usted.`;
export const book = 'El libro';
export const bookIs =
  'Todas las páginas de esta edición en un archivo, para guardar, prestar o imprimir. El libro no cambia cuando cambian las páginas.';
export const onYourDevice = 'Qué se queda en su dispositivo';
export const nothingSent =
  'Lo que usted marca, su zona y la forma de la página se quedan en este navegador. No se envía nada a ninguna parte; no hay cookies ni contadores.';
export const offlineCopy =
  'Después de una visita, el almanaque completo está disponible sin conexión en este dispositivo. Al pie de cada página se dice cuándo lo está. Con señal, usted lee siempre la edición más nueva. Sin señal, la página lo dice, nombra la edición y avisa si su día fue hace más de 60 días. Una corrección que usted ya leyó se queda, aunque no haya llegado el resto de su edición. Si borra los datos de este sitio en el navegador, la copia desaparece.';
export const terms = 'Programas y letras hechos por otros, y sus condiciones: [licenses.txt](file).';
export const feed = 'Las novedades, para programas que las siguen: [changes.xml](file).';
