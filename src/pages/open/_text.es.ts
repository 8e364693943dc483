import type * as English from './_text.en.ts';

export const title = 'Descargas';
export const lead = 'Las cifras del almanaque en un archivo para otros programas, de la misma edición que estas páginas.';
export const file =
  '[figures.csv](file) contiene cada cifra con todas sus filas: una línea de encabezados, y después una línea por cada fila. La unidad y la fuente están en columnas propias. Los encabezados están en inglés.';
export const ifYouUseIt = 'Si usted lo usa';
export const giveTheSource: typeof English.giveTheSource = (edition) =>
  `Diga la fuente de cada número, su lugar y el día de esta edición: ${edition}.`;
export const fetchAgain = 'Descárguelo de nuevo de vez en cuando. Los números se corrigen, y algunas páginas se retiran.';
export const whoDecides =
  'Deciden la etiqueta, el inspector apícola, el servicio de extensión y un médico; dígalo donde usted imprima un número.';
export const nobody = 'No contiene el nombre, el número ni el apiario de ninguna persona.';
