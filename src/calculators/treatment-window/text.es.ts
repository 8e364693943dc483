import { formatDay } from '../../../shared/days/show-day.ts';
import type { TreatmentState } from '../../../shared/treatments/label-row.ts';
import type * as English from './text.en.ts';
import { degrees, warmthAlone, warmthWords } from './warmth.ts';

export const stateNames: typeof English.stateNames = {
  'ruled-out': 'Descartado',
  ask: 'Pregunte',
  'works-poorly': 'Funciona mal',
  'nothing-found': 'No se encontró nada en contra',
};

export const nextWords: typeof English.nextWords = {
  'ruled-out': 'No en estos días.',
  ask: 'Todavía no. Lea su etiqueta y después pregunte.',
  'works-poorly': 'Lea su etiqueta. Pregunte por un momento mejor.',
  'nothing-found': 'No es un permiso. Lea su etiqueta.',
};

export const nextSteps: typeof English.nextSteps = {
  'ruled-out': 'una etiqueta lo prohíbe para lo que usted escribió. No lo ponga. Espere otros días o busque otro ingrediente activo.',
  ask: 'aquí hay algo que no se sabe. No lo ponga todavía. Lea la etiqueta de su envase y pregunte en la oficina que esta página nombra.',
  'works-poorly':
    'esta página no encontró nada en contra en una etiqueta, y los ensayos dicen que ahora hace poco. Pregunte por un momento mejor.',
  'nothing-found': 'esta página no encontró nada en contra. Eso no es un permiso. Lea su etiqueta: solo ella permite.',
};

export const headline: typeof English.headline = (judgements) => {
  if (judgements.length === 0) return 'La asociación no tiene filas de etiquetas: pregunte.';
  const count = (state: TreatmentState) => judgements.filter((one) => one.judgement.state === state).length;
  const ask = count('ask');
  if (ask === judgements.length) return `Primero pregunte por ${ask === 1 ? 'la única fila' : `las ${ask} filas`}.`;
  const parts: [number, string, string][] = [
    [count('ruled-out'), 'descartada', 'descartadas'],
    [ask, 'por la que preguntar', 'por las que preguntar'],
    [count('works-poorly'), 'que funcionaría mal', 'que funcionarían mal'],
    [count('nothing-found'), 'sin nada en contra encontrado', 'sin nada en contra encontrado'],
  ];
  return `De ${judgements.length} filas: ${parts.flatMap(([number, one, several]) => (number ? [`${number} ${number === 1 ? one : several}`] : [])).join(', ')}.`;
};

export const nothingFound = 'Esta página no encontró nada en contra. Lea su etiqueta.';
export const noLimits = 'La fila no tiene límites de temperatura.';

export const rules: typeof English.rules = {
  'supers-on': 'Esta etiqueta prohíbe las alzas para cosechar en la colmena.',
  'brood-forbidden': 'Esta etiqueta lo prohíbe mientras haya cría.',
  'supers-by-label': 'Pregunte: la etiqueta decide sobre las alzas para cosechar.',
  'harvest-by-label': 'Pregunte: la etiqueta decide cuánto tiempo antes de una cosecha debe haber terminado.',
  'mean-not-told': 'Pregunte: esta fila habla del promedio de la temperatura, que usted no escribió.',
  'coldest-not-told': 'Pregunte: esta fila habla de la hora más fría, que usted no escribió.',
  'only-quoted': 'Pregunte: solo vimos esta etiqueta como otros la repiten.',
  'no-registration-number': 'Pregunte: con esta etiqueta no se vio un número de registro.',
  'no-label-date': 'Pregunte: no vimos una fecha en esta etiqueta; la suya puede ser distinta.',
  'not-opened': 'Pregunte: no se pudo abrir ninguna etiqueta de esta forma.',
  'from-memory': 'Pregunte: esta fila es de memoria. No se abrió ninguna etiqueta.',
  superseded: 'Pregunte: esta forma ya no se vende.',
  'poor-with-brood': 'Funciona mal con cría: los ácaros bajo las tapas de cera siguen vivos. Ninguna etiqueta vista aquí lo prohíbe.',
  'not-registered': 'Pregunte: lo que no está registrado para colonias de abejas donde usted está no se pone en la colmena.',
  'not-checked': 'Pregunte si está registrado para colonias de abejas donde usted está.',
  'place-not-said': 'Pregunte: no se escribió un lugar; por eso ninguna fila es la suya todavía.',
};
export const poorCold = 'Funciona mal con tanto frío.';
export const poorWarm = 'Funciona mal con tanto calor.';
export const boxesBack: typeof English.boxesBack = (day) =>
  `Las alzas para cosechar podrían volver a ponerse el ${day}, después de su cosecha.`;
export const pastCheck: typeof English.pastCheck = (day) => `Pregunte: esta fila se debía revisar de nuevo antes del ${day}.`;
export const noRowFor: typeof English.noRowFor = (place) => `Pregunte: no hay una fila para ${place}.`;

export const elsewhereOut: typeof English.elsewhereOut = (place, form) =>
  `Espere: la etiqueta de otro lugar, ${place}, ${form}, descartaría estos días.`;
export const elsewherePoor: typeof English.elsewherePoor = (form) => `Funciona mal con este tiempo, según se dice de: ${form}.`;

export const kindWords: typeof English.kindWords = {
  'daily-high': 'temperaturas máximas diarias',
  mean: 'un promedio de día y noche',
  'any-time': 'temperaturas a cualquier hora',
};

const whose = (poorly: boolean): string => (poorly ? 'se dice que necesita' : 'su etiqueta pide');
const onDays = (when: string | undefined): string => (when ? ` ${when}` : '');
export const tooCold: typeof English.tooCold = ({ of, bound, when, poorly }) =>
  `Demasiado frío: ${whose(poorly)} ${kindWords[of]} de al menos ${bound}${onDays(when)}.`;
export const tooWarm: typeof English.tooWarm = ({ of, bound, when, poorly }) =>
  `Demasiado calor: ${whose(poorly)} ${kindWords[of]} de como máximo ${bound}${onDays(when)}.`;

export const yourWarmest: typeof English.yourWarmest = (warmth) => `Su día más caluroso llega a ${warmth}.`;
export const yourCoolest: typeof English.yourCoolest = (warmth) => `Su día más fresco llega a ${warmth}.`;
export const yourMean: typeof English.yourMean = (warmth) => `Su promedio es ${warmth}.`;
export const yourColdestHour: typeof English.yourColdestHour = (warmth) => `Su hora más fría es de ${warmth}.`;

export const limitWords: typeof English.limitWords = ({ of, leastC, mostC, when }, units) => {
  const range =
    leastC === undefined
      ? `como máximo ${warmthWords(mostC!, units)}`
      : mostC === undefined
        ? `al menos ${warmthWords(leastC, units)}`
        : `${warmthWords(leastC, units)} a ${warmthWords(mostC, units)}`;
  return `${kindWords[of]} de ${range}${onDays(when)}`;
};

const boxesAre = (on: boolean): string => (on ? 'puestas' : 'quitadas');
const withBrood = (brood: boolean): string => (brood ? 'con cría' : 'sin cría');
const inPlace = (place: string): string => (place.trim() ? `, ${place.trim()}` : '');

export const questionWords: typeof English.questionWords = (planned, units, language) => {
  const { start, lowestHighC, highestHighC, supersOn, brood, place } = planned;
  const highs = `${degrees(lowestHighC, units)} a ${warmthAlone(highestHighC, units)}`;
  return `Desde el ${formatDay(start, language)}, máximas de ${highs}, alzas de miel ${boxesAre(supersOn)}, ${withBrood(brood)}${inPlace(place)}`;
};

export const plannedWords: typeof English.plannedWords = (planned, units, language) => {
  const { start, lowestHighC, highestHighC, meanC, coldestC, supersOn, brood, place } = planned;
  return [
    `Desde el ${formatDay(start, language)}, máximas diarias de ${warmthWords(lowestHighC, units)} a ${warmthWords(highestHighC, units)}`,
    ...(meanC === undefined ? [] : [`un promedio de ${warmthWords(meanC, units)}`]),
    ...(coldestC === undefined ? [] : [`la hora más fría de ${warmthWords(coldestC, units)}`]),
    `alzas para cosechar ${boxesAre(supersOn)}`,
    `${withBrood(brood)}${inPlace(place)}.`,
  ].join(', ');
};

export const labelWords: typeof English.labelWords = ({ place, seen, registration, labelDate, form }, language) => {
  const about = `${form}; ${place}`;
  if (seen === 'not-opened') return `${about}. No se pudo abrir su etiqueta.`;
  if (seen === 'memory') return `${about}. De memoria: no se abrió ninguna etiqueta.`;
  const number = registration ? `Registro ${registration}` : 'Número de registro no visto';
  const date = labelDate ? `etiqueta del ${formatDay(labelDate, language)}` : 'fecha de la etiqueta no vista';
  return `${about}. ${number}, ${date}${seen === 'quoted' ? ', como otros la repiten' : ''}.`;
};

export const asked: typeof English.asked = {
  start: 'el primer día del tratamiento',
  coolest: (such) => `la máxima del día más fresco, como ${such}`,
  warmest: (such) => `la máxima del día más caluroso, como ${such}`,
  mean: (such) => `el promedio de día y noche, como ${such}`,
  coldest: (such) => `cuánto frío hace en la hora más fría, como ${such}`,
  supers: 'si las alzas para cosechar están puestas',
  brood: 'si hay cría',
  registered: 'si está registrado donde usted está',
  harvest: 'el día de la próxima cosecha',
};

export const faults: typeof English.faults = {
  noWeather: 'El tiempo está entre −60 y 60 °C (−76 y 140 °F).',
  warmestUnderCoolest: 'El día más caluroso no puede ser más fresco que el día más fresco.',
  meanOverHigh: 'El promedio no puede estar por encima de la máxima más alta.',
  hourOverHigh: 'La hora más fría no puede ser más cálida que la máxima más baja.',
};

export const again =
  'Mire otra vez el tiempo cada mañana. Cuente los ácaros antes de tratar, y otra vez cuando termine el tiempo de tratamiento de su etiqueta.';
export const stateAndStep: typeof English.stateAndStep = (state) => `${stateNames[state]}: ${nextSteps[state]}`;
export const source: typeof English.source = (note) => `Fuente ${note}`;

export const fields: typeof English.fields = {
  such: (example) => `Por ejemplo ${example}`,
  start: 'Primer día del tratamiento',
  highs: 'Máximas de los días que vienen',
  highsHint: 'La temperatura más alta de cada día, según el pronóstico. No las noches. Puede escribir {such}.',
  coolest: 'Máxima del día más fresco',
  warmest: 'Máxima del día más caluroso',
  rare: 'Solo donde una etiqueta habla de ellas',
  rareHint: 'Puede dejarlas vacías. La respuesta dice si una fila necesita una.',
  mean: 'Promedio de día y noche',
  coldest: 'Hora más fría',
  supers: 'Alzas para cosechar',
  supersChoices: { on: 'Puestas', off: 'Quitadas' },
  brood: 'Cría en la colmena',
  broodChoices: { yes: 'Sí', no: 'No' },
  place: 'País o estado de la etiqueta',
  places: (places) => (places.length > 0 ? `Hay filas para: ${places.join('; ')}.` : 'La asociación no tiene filas.'),
  registered: 'Registrado allí para colonias de abejas',
  registeredChoices: { yes: 'Sí, lo miré', no: 'No', 'not-checked': 'No lo he mirado' },
  harvest: 'Próxima cosecha, si va a haber una',
};

export const result: typeof English.result = {
  heading: 'Fila por fila',
  row: 'Ingrediente y forma',
  state: 'Estado y próximo paso',
  why: 'Por qué',
  asking: 'Pregunte primero por estas',
  askingOf: (rows) => `Pregunte primero por estas (${rows})`,
};

export const example: typeof English.example = {
  registered: (day) => `Registrado allí. Leído el ${day}.`,
  others: (rows) =>
    rows === 1
      ? '1 fila más solo dice: pregunte. No se pudo abrir ninguna etiqueta suya.'
      : `${rows} filas más solo dicen: pregunte. No se pudo abrir ninguna etiqueta suya.`,
};

const byLabel = 'como dice la etiqueta de su envase';
const BROOD = {
  yes: 'Llega a los ácaros bajo las tapas de cera',
  no: 'No llega a los ácaros bajo las tapas de cera',
  'outlasts-brood': 'Dura más que la cría',
  'not-known': 'Puede que llegue o no a los ácaros bajo las tapas de cera: no lo sabemos',
} as const;

export const background: typeof English.background = {
  heading: 'Las filas tal como se guardan',
  elsewhere: (rows) => `En otros lugares: ${rows === 1 ? 'una fila' : `${rows} filas`}`,
  warmth: (limits, units) => `Temperatura: ${limits.length === 0 ? byLabel : limits.map((limit) => limitWords(limit, units)).join('; ')}.`,
  boxes: (supers, backDays) =>
    `Alzas para cosechar: ${{ on: 'pueden estar puestas', label: byLabel, off: backDays === undefined ? 'quitadas' : `quitadas, de vuelta ${backDays} días después` }[supers]}.`,
  brood: (reaches, forbids) => `${BROOD[reaches]}${forbids ? ', y su etiqueta lo prohíbe con cría' : ''}.`,
  poorWithBrood: 'Funciona mal mientras hay cría.',
  poorOutside: (limits, units) => `Funciona mal fuera de ${limits.map((limit) => limitWords(limit, units)).join('; ')}.`,
  days: (least, most) =>
    `Días: ${most === undefined ? (least === undefined ? byLabel : `${least} o más`) : least === undefined || least === most ? most : `${least} a ${most}`}.`,
  resistance: (words) => `Resistencia: ${words}`,
  checkBy: (day) => `Se revisa de nuevo antes del ${day}.`,
  unopened: 'Etiquetas que no pudimos abrir',
  unopenedHint: 'Esta página no tiene límites para estas. Los tiene la etiqueta de su envase.',
  poorNotForbidden: 'Funciona mal mientras hay cría; ninguna etiqueta vista aquí lo prohíbe.',
  states: 'Qué significan los cuatro estados, y qué hacer después',
  state: (state) => `**${stateNames[state]}:** ${nextSteps[state]}`,
  temperatures:
    'Cada límite dice de qué temperatura habla: la máxima de cada día, el promedio de día y noche, o cualquier hora. Se compara con esa, hasta una décima de grado Celsius, porque las etiquetas dan grados Fahrenheit enteros. Un límite de la máxima diaria no mira las noches.',
  memory:
    'Una fila de memoria, de una etiqueta vista sin su fecha o sin su número de registro, o vista solo como otros la repiten, nunca dice más que: pregunte.',
};
