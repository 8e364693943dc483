import type * as English from './_access.en.ts';

export const title = 'Ajustes de pantalla';
export const lead = 'Cómo se ven las páginas, para qué zona son sus fechas, y cómo se probaron para que todos puedan leerlas.';
export const howItLooks = 'Cómo se ve una página';
export const remembered = 'Este dispositivo recuerda lo que usted elige.';
export const withoutScript = 'Para elegir aquí, permita que este sitio use su programa.';
export const groupOfForms = 'Cómo se ve la página';
export const forms: Record<keyof typeof English.forms, readonly [string, string]> = {
  sun: ['Mucho sol', '**Mucho sol** muestra negro sobre blanco, con letras más grandes.'],
  night: ['Noche', '**Noche** muestra letras claras sobre fondo oscuro. Un dispositivo con modo oscuro lo hace por sí mismo.'],
  large: ['Letra grande', '**Letra grande** agranda todas las letras.'],
  gloves: ['Guantes', '**Guantes** hace el doble de alto todo lo que se toca.'],
};
export const yourDistrict = 'Fechas para su zona';
export const groupOfDistricts = 'Zona de las fechas';
export const datesFor: typeof English.datesFor = (district) => `Fechas para ${district}`;
export const homeScreen = 'En su pantalla de inicio';
export const likeAProgram = 'Desde la pantalla de inicio, el almanaque se abre como un programa propio, también sin señal.';
export const howToInstall =
  'En Safari, toque Compartir, y después “Agregar a inicio”. En Firefox para teléfonos, abra el menú y toque la línea sobre la pantalla de inicio.';
export const addToHomeScreen = 'Agregar a la pantalla de inicio';
export const notAgain = 'No mostrar esto de nuevo';
export const whatTheyDo = 'Qué hace cada opción';
export const yourColors = 'Se respetan los colores que usted fija en su sistema. Nada se mueve por sí mismo.';
export const withoutMouse = 'Sin ratón, de oído, con la página agrandada';
export const withoutMousePoints = [
  'La tecla Tab llega a todo, en orden. Un marco grueso muestra dónde está usted.',
  'La primera vez que se pulsa Tab, se ofrece un camino para saltar el encabezado de la página y llegar a su texto.',
  'Los títulos, las listas, las tablas y los recuadros están marcados como lo que son. Los dibujos tienen palabras. Los resultados se leen en voz alta cuando llegan.',
  'Agrande una página cuatro veces: sus líneas se doblan, y no se pierde nada. Solo las tablas anchas se mueven hacia los lados, en un marco propio.',
  'Ningún color dice algo por sí solo. Un estado es también una palabra y una forma.',
  'No hay que arrastrar nada, nada tiene un límite de tiempo, y todo lo que se marca se puede desmarcar.',
];
export const withoutNetwork = 'Sin programa, sin señal, en papel';
export const withoutNetworkPoints = [
  'Sin programa se puede leer cada página, con un ejemplo resuelto en lugar de cada formulario.',
  'Después de una visita, el almanaque está disponible sin conexión en su dispositivo.',
  'Cada página se imprime en negro sobre blanco. [El libro](book) las contiene todas, también para un lector electrónico.',
];
export const heldAgainst = 'Con qué se comparó';
export const guidelines =
  'Con las [Pautas de Accesibilidad para el Contenido Web 2.2](wcag) del World Wide Web Consortium, en las páginas de una asociación de demostración en inglés. Los niveles A y AA son los que suelen pedir las leyes.';
export const columns = { level: 'Nivel', met: 'Se cumple', notInUse: 'No se usa', notMet: 'No se cumple' };
export const notMet =
  'No se usa: no hay películas ni sonido, no hay nada que comprar ni firmar, y nadie tiene que identificarse. No se cumplen estos puntos, todos del nivel AAA:';
export const criteria: typeof English.criteria = {
  '1.3.6': 'Para qué sirven los botones y las imágenes se dice solo con palabras, no con un código para programas.',
  '1.4.8': 'Los párrafos están más juntos de lo que piden las pautas.',
  '2.2.4': 'La línea que habla de la copia en su dispositivo aparece sin que nadie la pida.',
  '2.4.9': 'Algunos enlaces, como “Ver todas las fuentes de esta cifra”, dicen a dónde llevan solo junto con su fila.',
  '3.1.3': 'No es seguro que todas las palabras poco comunes estén en [la lista de palabras](words).',
  '3.1.4': 'Las unidades y los nombres cortos de las oficinas no se escriben completos cada vez.',
  '3.1.5': 'Las frases son cortas, pero no se midió la edad de lectura.',
  '3.1.6': 'Ninguna palabra dice cómo se pronuncia.',
  '3.3.5': 'No todas las casillas tienen una indicación propia.',
};
export const whoLooked =
  'Cada vez que se cambia el programa del almanaque, otros programas revisan estos puntos. Personas revisaron el resto el 25 de noviembre de 2026, en las páginas en inglés. Todavía no lo ha probado nadie que viva con un lector de pantalla.';
export const inYourWay = '¿Algo le estorba?';
export const writeTo: typeof English.writeTo = (address) =>
  `Escriba a [${address}](mail). Diga en qué página, qué usa usted para leerla, y qué no pudo hacer.`;
