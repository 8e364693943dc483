import type * as English from './calculators.en.ts';

export const tools: typeof English.tools = {
  'mite-count': { title: 'Conteo de ácaros', lead: 'Ácaros por cada 100 abejas, qué tan seguro es, y si hay que actuar.' },
  'count-day': { title: 'Día de conteo', lead: 'Los conteos de ácaros de una tarde juntos, y el archivo para la asociación.' },
  'sampling-plan': { title: 'Plan de muestreo', lead: 'Cuántas abejas y colonias mirar, y cuántas veces eso no alcanza.' },
  'sticky-board': { title: 'Lámina adhesiva', lead: 'Los ácaros que caen en un día, y por qué una lámina no dice más.' },
  syrup: { title: 'Jarabe', lead: 'Azúcar, agua y jarabe por peso o volumen, y cuándo cristalizaría.' },
  'winter-stores': { title: 'Reservas para el invierno', lead: 'Qué hay en la colmena, qué falta, y el jarabe que lo cubre.' },
  'package-calendar': { title: 'Calendario del paquete', lead: 'Qué pasa y cuándo, desde el día en que instala su paquete.' },
  'package-order': {
    title: 'Pedido de paquetes',
    lead: 'Cuánto pesa y qué necesita un pedido de paquetes, y una hoja para recogerlos.',
  },
  'weight-check': { title: 'Revisión de pesos', lead: 'Una revisión de los pesos netos que compró, con una regla publicada.' },
  'brood-dates': {
    title: 'Fechas de la cría',
    lead: 'De lo que vio en una celda: cuándo se puso el huevo, se tapa, nace y pone huevos.',
  },
  'treatment-window': {
    title: 'Lo que descartan las filas de etiquetas',
    lead: 'Su clima, sus alzas y su cría contra filas de etiquetas con fecha. Su etiqueta decide.',
  },
  'degree-days': { title: 'Grados día', lead: 'El calor sumado día a día, con un método que se nombra.' },
};
