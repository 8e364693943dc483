import { formatNumber, withMarkHere } from '../../../shared/numbers/show-number.ts';
import { farOff, type RuleName } from './model.ts';
import { meanAway, places, plain, trimmed, weightWords, whole } from './shown.ts';
import type * as English from './text.en.ts';

export const fields: typeof English.fields = {
  rule: 'Con qué regla',
  canDisagree: 'Con los mismos pesos pueden no estar de acuerdo. Elija la de su país.',
  label: 'Peso neto de la etiqueta',
  youCanType: 'Puede escribir 3 lb.',
  lot: 'Paquetes de la entrega',
  allOfIt: 'Todos los que llegaron en ella.',
  weights: 'Pesos netos',
  weightsHint: `Uno por línea, o una lista pegada. ${withMarkHere('.') === '.' ? 'Use un punto para los decimales; una coma separa dos pesos.' : 'Use una coma para los decimales.'} [Cómo pesar](how)`,
};
export const what: typeof English.what = {
  rule: 'una regla',
  label: {
    us: 'el peso neto de la etiqueta, por ejemplo 48 o 3 lb',
    metric: 'el peso neto de la etiqueta, por ejemplo 1361',
  },
  lot: 'cuántos paquetes tenía la entrega',
  weights: 'los pesos, uno por línea',
  oneWeight: { us: 'un peso en onzas', metric: 'un peso en gramos' },
};
export const weight = 'Peso';
export const weightsRead: typeof English.weightsRead = (count) => `${count} ${count === 1 ? 'peso' : 'pesos'}`;

export const ruleTitles: typeof English.ruleTitles = { eu: 'Unión Europea y Reino Unido', ca: 'Canadá', us: 'EE. UU.' };
export const verdictNames: typeof English.verdictNames = { passes: 'Cumple', fails: 'No cumple', 'too-few': 'Faltan pesos' };
export const noVerdict = 'Sin veredicto';

export const noFigure = 'No hay cifra para esta asociación.';
const theRule: Readonly<Record<RuleName, string>> = {
  eu: 'la regla de la Unión Europea y el Reino Unido',
  ca: 'la regla de Canadá',
  us: 'la regla de EE. UU.',
};
const fromMemory = ', de memoria, sin abrir la publicación';

export const headline: typeof English.headline = ({ rule }, { check, held }, units) => {
  const away = meanAway(check, units);
  const mean = `el promedio está ${away ? `${away.first} por ${away.isUnder ? 'debajo' : 'encima'} de la etiqueta` : 'en la etiqueta'}`;
  if (!held) return `Sin veredicto: no hay cifras para ${theRule[rule]}; ${mean}.`;
  if (check.verdict === 'too-few') return `Faltan pesos para ${theRule[rule]}. Hasta ahora ${mean}.`;
  return `${verdictNames[check.verdict]} con ${theRule[rule]}: ${mean}.`;
};

export const questionWords: typeof English.questionWords = ({ rule, lot, 'label-g': labelG, 'weights-g': weights }, units) =>
  `${whole(weights.length)} de ${whole(lot)} paquetes con etiqueta de ${plain(labelG, units)}, con ${theRule[rule]}`;

export const nextStep: typeof English.nextStep = (verdict) =>
  ({
    passes: 'Guarde la lista de pesos con la factura.',
    fails: 'Mande al proveedor los pesos y la regla el mismo día, y pida una respuesta por escrito.',
    'too-few': 'Pese los paquetes que faltan antes de decir algo sobre la entrega.',
    'not-judged': 'Elija una regla para la que esta página tenga cifras, o pregunte qué regla vale donde usted está.',
  })[verdict];
export const weighRest = 'Sigue: pese los demás hoy, porque las abejas comen y mueren.';
export const nextDelivery = 'Próxima revisión: la próxima entrega, con la misma regla y en la misma báscula.';

export const meanWords: typeof English.meanWords = ({ check }, units) => {
  const away = meanAway(check, units);
  return away ? `${away.first} por ${away.isUnder ? 'debajo' : 'encima'} de la etiqueta (${away.other})` : 'en la etiqueta';
};

export const sampleWords: typeof English.sampleWords = ({ lot }, { check: { sampleNeeded, shortSampleNeeded }, held }) => {
  const count =
    shortSampleNeeded === undefined || shortSampleNeeded === sampleNeeded
      ? ''
      : `, y ${whole(shortSampleNeeded)} para contar los que pesan de menos`;
  return `${whole(sampleNeeded)} de ${whole(lot)}${count}${held!.sampleFromMemory ? fromMemory : ''}`;
};

export const noSpread = 'Un solo peso no tiene dispersión.';

export const limitWords: typeof English.limitWords = ({ check: { limitG, spreadG } }, { 'weights-g': weights }, units) => {
  if (limitG === undefined) return weights.length < 2 ? 'Un solo peso no da ninguno.' : noFigure;
  if (limitG > 0) return weightWords(limitG, units);
  return `${plain(0, units)}: ${spreadG === 0 ? 'todos pesan lo mismo' : 'se pesan todos, así que el azar no cuenta'}`;
};

export const shortWords: typeof English.shortWords = (count, times, { check: { toleranceG }, toleranceFromMemory }, units) => {
  if (count === undefined || toleranceG === undefined) return 'No hay tolerancia para esta etiqueta.';
  return `${whole(count)}, por más de ${weightWords(times * toleranceG, units)}${toleranceFromMemory ? fromMemory : ''}`;
};

export const notCounted = 'Esta regla no los cuenta.';

export const verdictReason: typeof English.verdictReason = (
  { check: { tests, verdict, sampleNeeded, shortSampleNeeded }, held },
  { 'weights-g': weights },
) => {
  if (!held) return 'Sin sus cifras no hay veredicto.';
  if (verdict === 'too-few')
    return `La regla pide ${whole(Math.max(sampleNeeded, shortSampleNeeded ?? 0))} pesos; aquí hay ${whole(weights.length)}.`;
  if (verdict === 'passes')
    return `El promedio está bastante cerca de la etiqueta.${tests.short || tests.shortTwice ? ' No pesan de menos más paquetes de los que la regla permite.' : ''}`;
  return [
    ...(tests.mean === 'fails' ? ['El promedio está más por debajo de la etiqueta de lo que permite el azar.'] : []),
    ...(tests.short === 'fails' ? ['A demasiados les falta más que la tolerancia.'] : []),
    ...(tests.shortTwice === 'fails' ? ['A demasiados les falta más del doble de la tolerancia.'] : []),
  ].join(' ');
};

export const ruleWords: typeof English.ruleWords = ({ rule }, held) =>
  `${ruleTitles[rule].replace(/\.$/, '')}. ${held ? `${held.from}.` : noFigure}`;

export const farOffWords: typeof English.farOffWords = (weighed) => {
  const far = farOff(weighed);
  if (far.length === 0) return '';
  const named =
    far.length > 6
      ? `${far.length} pesos están`
      : far.length === 1
        ? `el peso ${far[0]} está`
        : `los pesos ${far.slice(0, -1).join(', ')} y ${far.at(-1)} están`;
  return `Mire otra vez: ${named} por debajo de la mitad de la etiqueta o por encima del doble. ¿Se pegó también otra columna?`;
};

export const sumWords: typeof English.sumWords = (
  { 'label-g': labelG, 'weights-g': weights },
  { check: { meanErrorG, spreadG, limitG }, held },
  units,
) => {
  const unit = units === 'us' ? 'oz' : 'g';
  const shown = (grams: number): string => trimmed(grams, units);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = `${shown(total)} ${unit} ÷ ${whole(weights.length)} − ${shown(labelG)} ${unit} = ${shown(meanErrorG).replace('-', '−')} ${unit}.`;
  if (!held || spreadG === undefined || limitG === undefined) return mean;
  const reached = `El promedio y el margen juntos: ${shown(labelG + meanErrorG)} + ${shown(limitG)} = ${shown(labelG + meanErrorG + limitG)} ${unit}, contra ${shown(labelG)} ${unit}.`;
  if (limitG === 0) return `${mean} ${reached}`;
  return `${mean} Margen para el azar: ${places(limitG / spreadG, 3)} (t ÷ √${whole(weights.length)}) × ${shown(spreadG)} ${unit} = ${shown(limitG)} ${unit}. ${reached}`;
};

export const faultWords: typeof English.faultWords = (reason, row, { rule, lot, 'weights-g': weights }, units) => {
  const most = units === 'us' ? `0 oz y como máximo ${whole(3500)} oz` : `0 g y como máximo ${formatNumber(100_000, { places: 0 })} g`;
  switch (reason) {
    case 'no-label':
      return ['label-g', `El peso de la etiqueta debe ser más de ${most}.`];
    case 'no-lot':
    case 'lot-not-whole':
      return ['lot', 'Escriba cuántos paquetes tenía la entrega, 1 o más.'];
    case 'lot-not-in-rule':
      return [
        'lot',
        lot < 2 ? `Una entrega de 1 no se puede juzgar con ${theRule[rule]}.` : `Tantos paquetes quedan fuera de ${theRule[rule]}.`,
      ];
    case 'no-weights':
      return ['weights-g', 'Escriba los pesos, uno por línea.'];
    case 'impossible-weight':
      return ['weights-g', `Peso ${row}: debe ser más de ${most}.`];
    case 'more-weights-than-lot':
      return ['lot', `Hay ${whole(weights.length)} pesos, pero solo ${whole(lot)} paquetes.`];
  }
};

export const chartLabel: typeof English.chartLabel = (units) =>
  `Un punto por cada paquete, según ${units === 'us' ? 'las onzas' : 'los gramos'} que está por encima o por debajo de la etiqueta. La barra va desde el promedio hasta donde el azar pudo llevarlo. La línea de rayas es la etiqueta.`;
export const label: typeof English.label = (weight) => `etiqueta ${weight}`;

export const spotCheck = '**Esta es una revisión de la propia asociación de lo que compró. No es una inspección legal.**';
export const notLegal = 'Una revisión de la propia asociación, no una inspección legal.';
export const outputs: typeof English.outputs = {
  mean: 'Promedio',
  room: 'Margen para el azar',
  rule: 'Regla usada',
  asksFor: 'Pesos que pide',
  spread: 'Dispersión',
  shortOnce: 'Les falta más que la tolerancia',
  shortTwice: 'Les falta más del doble',
};

export const stepByStep = 'El ejemplo paso a paso, y una tabla';
export const delivery: typeof English.delivery = (lot, label) =>
  `${lot === 12 ? 'Los doce paquetes de una entrega' : `Doce paquetes de una entrega de ${lot}`}, con etiqueta de ${label}.`;
export const byEach = 'Los mismos doce con cada regla';
export const table: typeof English.table = {
  rule: 'Regla',
  asksFor: 'Pide',
  room: 'Margen para el azar',
  asWeighed: 'Como se pesaron',
  less: (weight) => `Cada uno ${weight} menos`,
};
export const sayWhich: typeof English.sayWhich = (weight) =>
  `Con cada peso ${weight} menos, no cumple con la regla de EE. UU. y sí cumple con la de Canadá. Por eso diga qué regla usó.`;

export const net: typeof English.net = {
  title: 'Cómo obtener pesos netos',
  steps: [
    'Elija los paquetes por sorteo, antes de mirar. Póngales número.',
    'Ponga la báscula a nivel, fuera del viento, y use la misma para todos. Es mejor una que muestre pasos finos.',
    'Pese el paquete lleno: abejas, caja, jaula de la reina y lata. Anótelo.',
    'Ponga las abejas en su colmena. Mantenga la lata derecha y no pierda jarabe.',
    'Pese otra vez la misma caja, con su lata y su jaula de la reina. Deje en ella las abejas muertas.',
    'Reste el segundo peso del primero. Ese es el peso neto de las vivas.',
  ],
  queenCage: '¿Se queda la jaula de la reina en la colmena? Pésela cuando la saque, y súmela al segundo peso.',
  madeUp: 'Inventado, para una etiqueta de 3 lb',
  full: 'Paquete lleno',
  empty: 'Caja vacía con lata y abejas muertas',
  cage: 'Jaula de la reina, colgada en la colmena',
  net: 'Neto',
};

export const rules: typeof English.rules = {
  title: 'Qué dicen las tres reglas',
  says: [
    '**Las tres:** el promedio de la muestra puede estar por debajo de la etiqueta solo hasta donde el azar puede llevarlo. El margen para el azar es la dispersión × t ÷ √ del número pesado, con t a {certainty-us} en EE. UU. y a {certainty} en los otros.',
    '**Unión Europea y Reino Unido:** de menos de 100 paquetes se pesan todos, y el promedio no tiene margen. Como máximo a {share} les puede faltar más que la tolerancia, y a ninguno el doble.',
    '**Canadá:** un cuarto de la entrega, al menos {least}, y todos si son diez o menos. No cumple cuando a {twice} les falta más del doble de la tolerancia.',
    '**EE. UU.:** {sample} de 12 a 250, y todos si son menos. Esa tabla es de memoria, sin abrir la publicación.',
  ],
  short: 'Cuánto le puede faltar a un paquete',
  label: 'Etiqueta',
  noFigure: 'sin cifra',
  fromMemory: 'de memoria',
  fineScale: 'Las de EE. UU. no deciden nada aquí. El manual pide una báscula cuyos pasos sean como máximo la sexta parte de ellas{mark}.',
};

export const limits = [
  'Si se violó una ley. Eso solo lo puede decir la oficina de pesas y medidas.',
  'Cuánto se puso al sacudir. Las abejas mueren en el camino, y las vivas comen de la lata.',
  'Las abejas llenas pesan más que las que tienen hambre, y las mojadas más que las secas.',
  'Estas reglas se escribieron para productos empacados. Pregunte si obligan a quien vende abejas vivas.',
  'Una báscula que falla, falla para todos. Pruébela antes con un peso conocido.',
];
export const lookFirst: typeof English.lookFirst = (title) => `Antes de pesar, mire: [${title}](list).`;
