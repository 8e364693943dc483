import type * as English from './_reading.en.ts';

export const title = 'Lecturas';
export const lead = 'Qué vale la pena leer, para quién es, y qué biblioteca lo presta.';
export const kinds: typeof English.kinds = {
  starter: 'Para empezar',
  'next step': 'El paso siguiente',
  reference: 'Para consultar',
  periodical: 'Revistas',
  'free leaflet': 'Folletos',
};
export const free = 'Para leer gratis';
export const toBorrow = 'Para pedir prestado o llevar a casa';
export const savePdf =
  'Son documentos públicos de oficinas del gobierno y universidades. Guarde un PDF en su teléfono antes de ir a donde no hay señal. Para leer una página web necesita señal.';
export const madeUp = 'Los títulos que dicen “inventado” se inventaron para la demostración.';
export const noDate = 'sin fecha';
export const readers: typeof English.readers = {
  any: 'Para todos.',
  'first year': 'Para el primer año.',
  'some seasons': 'Para personas con algunas temporadas.',
};
export const invented = 'Inventado.';
export const oldMiteAdvice: typeof English.oldMiteAdvice = (year) =>
  `Sus consejos sobre ácaros son de ${year}: compárelos con estas páginas.`;
export const writtenFor = 'Escrito para {place}.';
export const lentBy: typeof English.lentBy = (library) => `Lo presta: ${library}.`;
export const formats: typeof English.formats = { PDF: 'PDF', paper: 'En papel', 'web page': 'Página web' };
export const opened: typeof English.opened = (day) => `visto el ${day}`;
