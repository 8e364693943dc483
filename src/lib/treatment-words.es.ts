import type * as English from './treatment-words.en.ts';

export const noBrood = 'Una colmena sin cría.';
export const reaches: typeof English.reaches = {
  yes: 'Llega a los ácaros bajo las tapas de cera.',
  no: 'Solo llega a los ácaros sobre las abejas, a ninguno bajo las tapas de cera.',
  'outlasts-brood': 'Se queda hasta que la cría ha nacido.',
  'not-known': 'No sabemos si llega a los ácaros bajo las tapas de cera: su etiqueta lo dice.',
};
export const poorWithBrood =
  'Funciona mal mientras hay cría: los ácaros bajo las tapas de cera siguen vivos. Eso no es una regla de una etiqueta.';

export const forbids: typeof English.forbids = {
  off: 'Alzas para cosechar en la colmena.',
  label: 'Alzas para cosechar, a menos que la etiqueta las permita.',
  on: 'Nada sobre alzas para cosechar en esta fila; lea la etiqueta.',
};
export const forbidsOtherUse = 'Otra cantidad, otro tiempo u otra mezcla que los de la etiqueta.';

export const broodCells: typeof English.broodCells = {
  forbidden: 'No permitido',
  poor: 'Funciona mal',
  yes: 'Llega a los ácaros bajo las tapas de cera',
  no: 'Solo llega a los ácaros sobre las abejas',
  'outlasts-brood': 'Se queda hasta que la cría ha nacido',
  'not-known': 'No se sabe: lea la etiqueta',
};
export const boxesCells: typeof English.boxesCells = {
  off: 'No permitidas',
  label: 'La etiqueta decide',
  on: 'No descartadas: lea la etiqueta',
};
export const ofForms: typeof English.ofForms = (words, forms, all) => `${words} (${forms} de ${all} formas)`;

const KINDS: Readonly<Record<English.BroodKind, readonly [one: string, several: string]>> = {
  forbidden: ['la etiqueta no lo permite', 'la etiqueta no las permite'],
  poor: [
    'funciona mal, porque los ácaros bajo las tapas de cera siguen vivos',
    'funcionan mal, porque los ácaros bajo las tapas de cera siguen vivos',
  ],
  no: [
    'solo llega a los ácaros sobre las abejas, a ninguno bajo las tapas de cera',
    'solo llegan a los ácaros sobre las abejas, a ninguno bajo las tapas de cera',
  ],
  'outlasts-brood': ['se queda en la colmena hasta que la cría ha nacido', 'se quedan en la colmena hasta que la cría ha nacido'],
  yes: ['llega a los ácaros bajo las tapas de cera', 'llegan a los ácaros bajo las tapas de cera'],
  'not-known': ['puede que llegue o no a los ácaros bajo las tapas de cera', 'puede que lleguen o no a los ácaros bajo las tapas de cera'],
};

export const everyForm: typeof English.everyForm = (kind) => `${KINDS[kind][0]}.`;
export const someForms: typeof English.someForms = (kind, forms, all, form) =>
  `${forms} de ${all} formas${form ? ` (${form})` : ''}: ${KINDS[kind][forms === 1 ? 0 : 1]}.`;
export const inSummer: typeof English.inSummer = (sentences) => `En verano, con cría, ${sentences.join(' ')}`;

export const protects: typeof English.protects = {
  vapour: 'El respirador que la etiqueta nombra; el viento a su espalda.',
  acid: 'Guantes a prueba de ácidos; agua a mano.',
  eyes: 'Protección cerrada para los ojos.',
  skin: 'Los guantes que la etiqueta nombra; manos lavadas después.',
  dust: 'Nada de polvo en el aire que respira.',
};
export const protectsByLabel = 'Guantes, protección para los ojos y respirador como los nombra su etiqueta.';

export const record: typeof English.record = [
  'La colmena o el apiario, y quién lo hizo.',
  'El producto como lo nombra su etiqueta, con el número de registro y de lote.',
  'El día en que se puso y el día en que se quitó.',
  'La temperatura más alta de cada uno de esos días, y la hora más fría.',
  'Ácaros por cada 100 abejas antes, y otra vez después.',
  'El primer día en que pueden volver las alzas para cosechar, como dice la etiqueta.',
];

export const notOpened = 'No se abrió ninguna etiqueta de esta forma';
export const onPoorly: typeof English.onPoorly = (source) => `Sobre lo que funciona mal: ${source}`;
const dateWords = (day: string | undefined): string => (day ? `etiqueta del ${day}` : 'fecha de la etiqueta no vista');
export const labelOf: typeof English.labelOf = (place, number, day) =>
  `${place}, ${number ? `registro ${number}` : 'número de registro no visto'}, ${dateWords(day)}`;

export const row: typeof English.row = {
  temperature: 'Temperatura',
  needs: 'Necesita',
  notAllowed: 'No permitido',
  poorly: 'Funciona mal',
  outside: 'Fuera de {limits}.',
  gear: 'Protección',
  moreGear: 'Si la etiqueta pide más, siga la etiqueta.',
  days: 'Días',
  resistance: 'Resistencia',
  notes: 'Notas',
  label: 'Etiqueta',
  labelSeen: (number, day) => `${number ? `Registro ${number}` : 'Número de registro no visto'}; ${dateWords(day)}.`,
  quoted: 'Vista solo como otros la repiten.',
  superseded: 'Ya no se vende en esta forma.',
  checkBy: 'Revisar antes del',
};

const KINDS_OF_WARMTH = {
  'daily-high': 'temperaturas máximas diarias',
  mean: 'un promedio de día y noche',
  'any-time': 'temperaturas a cualquier hora',
};
export const limits: typeof English.limits = {
  byLabel: 'como dice la etiqueta de su envase',
  warmth: (of, hasLeast, hasMost, when) =>
    `${KINDS_OF_WARMTH[of]} de ${hasLeast && hasMost ? '{least} a {most}' : hasLeast ? 'al menos {least}' : 'como máximo {most}'}${when ? ` ${when}` : ''}`,
  days: (count) => (count === 1 ? '1 día' : `${count} días`),
  fromTo: '{least} a {most}',
  atMost: 'como máximo {most}',
  orMore: '{least} o más',
  back: 'Vuelven {wait} después de que termine.',
};

export const page: typeof English.page = {
  title: 'Tratamientos',
  lead: 'Por ingrediente activo: lo que las filas de etiquetas dicen de alzas de miel, cría, temperatura y tiempo. No se recomienda ninguno.',
  decides: '**La etiqueta de su envase decide.** Solo cuenta un producto registrado para colonias de abejas donde usted está.',
  rowsRuleOut:
    'La etiqueta de su envase decide. Estas filas pueden descartar, nunca autorizar. Solo cuenta un producto registrado para colonias de abejas donde usted está.',
  countFirst: 'Primero cuente los ácaros.',
  ruledOut: 'Lo que descartan las filas de etiquetas',
  table: 'Tabla: los ingredientes lado a lado',
  ingredient: 'Ingrediente',
  boxes: 'Alzas de miel',
  brood: 'Con cría',
  temperature: 'Temperatura',
  time: 'Tiempo',
  readLabel: 'Lea la etiqueta',
  noRow: (land) => `No hay una fila de etiqueta para este lugar: ${land}. Lea la etiqueta que tiene en la mano.`,
  noRowStrong: (land) => `**No hay una fila de etiqueta para este lugar: ${land}.** Lea la etiqueta que tiene en la mano.`,
  unread: (names) => `No se abrió ninguna etiqueta de: ${names.join(', ')}.`,
  forAll: 'Para todos',
  notMore: 'No dé más, ni más tiempo, ni más a menudo de lo que dice la etiqueta.',
  noMix: 'No use blanqueador de madera, una mezcla casera o un producto para otro animal.',
  notAgain: 'No dé el mismo ingrediente una y otra vez: los ácaros le sobreviven.',
  noAntibiotics: 'No busque antibióticos aquí. La loque es asunto del inspector apícola.',
  checkAgain: (day) => `Fila que se revisa de nuevo antes del ${day}`,
  figures: (count) => `Cifras que tienen que ver (${count})`,
  writeDown: 'Qué anotar',
  whatNot: 'Qué no hacer',
  notUncounted: 'No lo dé sin un conteo antes y un conteo después.',
  notOften: 'No lo dé una y otra vez: los ácaros sobreviven a lo que encuentran demasiado a menudo.',
  all: 'Todos los tratamientos',
};
