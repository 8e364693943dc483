import type * as English from './text.en.ts';

export const anchorTable: typeof English.anchorTable = {
  label: 'Los días del año en cada zona',
  day: 'Día del año',
  basis: 'De dónde viene',
  likely: (days) => `probable: ${days}`,
  noDate: 'sin fecha',
};

export const bookFiles: typeof English.bookFiles = {
  epub: 'El libro para un lector electrónico',
  epubIs: (edition) => `EPUB, {size}, edición del ${edition}.`,
  html: 'El libro en una sola página',
  htmlIs: (edition) =>
    `Para una memoria USB o una impresora, {size}, edición del ${edition}. Se abre en cualquier navegador, sin conexión.`,
};

export const cited: typeof English.cited = {
  noAddress: '(no se encontró una dirección abierta)',
  opened: (day) => `(visto el ${day})`,
};

export const anyTime = 'todo el año';
export const noFigure = 'no hay cifra para esta asociación';
export const andOthers: typeof English.andOthers = (first) => `${first} y otros`;
export const mistake = 'avisar de un error';

export const meetings: typeof English.meetings = {
  calledOff: 'Cancelada.',
  bring: (things) => `Traiga: ${things.join('; ')}.`,
};

export const miniRing: typeof English.miniRing = { year: 'Año', seeWholeYear: 'Ver el año completo' };

export const nextSteps: typeof English.nextSteps = {
  title: 'Qué hacer ahora',
  takeCare: (line) => `**Tenga cuidado:** ${line}`,
  more: 'Más',
  moreOn: (hazard) => `sobre ${HAZARDS[hazard] ?? 'esta regla de seguridad'}`,
  notSure: (name) => `**¿No está seguro? Llame:** ${name}`,
};

/** By the ids of cautions. */
const HAZARDS: Readonly<Record<string, string>> = {
  acids: 'los ácidos',
  'alcohol-fire': 'el alcohol y el fuego',
  allergy: 'las alergias',
  'carbon-dioxide': 'el dióxido de carbono',
  climbing: 'subir para alcanzar abejas',
  'disease-spread': 'el contagio de enfermedades',
  driving: 'llevar abejas por la carretera',
  fire: 'el fuego',
  fumes: 'los vapores',
  'honey-as-feed': 'la miel como alimento',
  'hot-wax': 'la cera caliente',
  'infants-honey': 'la miel y los niños menores de un año',
  lifting: 'levantar peso',
  smoke: 'el humo',
  stings: 'las picaduras',
};

export const origins: typeof English.origins = {
  label: 'Tabla: páginas según quién las escribió y las revisó',
  from: 'De',
  pages: 'Páginas',
  compared: 'Comparadas por nosotros',
};

export const pageDays: typeof English.pageDays = { inDistrict: 'En {district}: {days}.', everywhere: '{days}.' };

export const phasesTable: typeof English.phasesTable = { label: 'Tabla: las partes del año en cada zona', part: 'Parte del año' };

export const sideBySide: typeof English.sideBySide = {
  title: 'Al lado de lo que se le parece',
  label: 'Tabla: las señales, y las de lo que se le parece',
  sign: 'Señal',
  key: 'En **negrita**: la indica con fuerza. Una raya: no es señal de ella.',
};

export const yearSheet: typeof English.yearSheet = {
  key: { list: 'empieza una lista', pest: 'hay que estar atento', bloom: 'una planta empieza a florecer', meeting: 'una reunión' },
  begin: (count) => (count === 1 ? 'empieza 1' : `empiezan ${count}`),
  calledOff: 'Cancelada.',
};

export const formsTable: typeof English.formsTable = {
  label: 'Tabla: las formas, una al lado de la otra',
  brood: 'Con cría',
  boxes: 'Alzas de miel',
  warmth: 'Temperatura',
  noLongerSold: (form) => `${form} (ya no se vende)`,
  readLabel: 'Lea la etiqueta',
  notOpened: (forms, all) => `No se abrió ninguna etiqueta de ${formsIn(forms, all)}, así que esta página no tiene límites para eso.`,
  fromMemory: (forms, all) => `La fila de ${formsIn(forms, all)} es de memoria.`,
  checkBy: 'Revise de nuevo estas filas a más tardar el {day}.',
};

const formsIn = (forms: readonly string[] | null, all: number): string =>
  forms === null ? (all === 1 ? 'esta forma' : 'ninguna de estas formas') : forms.map((form) => `“${form}”`).join(' o ');
