import { formatNumber } from '../../../shared/numbers/show-number.ts';
import { kitchenCups, kitchenVolume, kitchenWeight } from '../../../shared/units/kitchen.ts';
import { densityAlone, temperatureRange, temperatureWords, three, volumeAlone, weightAlone } from '../form/measures.ts';
import { smallWeight } from '../form/units.ts';
import type * as English from './text.en.ts';

export const fields: typeof English.fields = {
  sugarParts: 'Partes de azúcar',
  waterParts: 'Partes de agua',
  by: 'Partes por',
  weight: 'Peso',
  volume: 'Volumen',
  know: 'Se sabe cuánto hay de',
  sugar: 'Azúcar',
  water: 'Agua',
  syrup: 'Jarabe que se quiere',
  amount: 'Cantidad',
  unit: 'Unidad',
  temperature: 'Temperatura del jarabe',
  youCanType: { us: 'Puede escribir 20 C.', metric: 'Puede escribir 68 F.' },
  cup: 'Azúcar en una taza de EE. UU.',
  cupCounts: 'Cuenta cuando el azúcar se mide por volumen.',
};
export const unitChoices: typeof English.unitChoices = {
  kg: 'kg', g: 'g', lb: 'lb', oz: 'oz (peso)', L: 'L', mL: 'mL', 'us-gal': 'galones de EE. UU.', 'us-qt': 'cuartos de EE. UU.', 'us-cup': 'tazas de EE. UU.', 'imp-gal': 'galones imperiales', 'imp-pt': 'pintas imperiales',
}; // prettier-ignore

export const what: typeof English.what = {
  sugarParts: 'las partes de azúcar, por ejemplo 2',
  waterParts: 'las partes de agua, por ejemplo 1',
  by: 'si las partes son por peso o por volumen',
  know: 'de qué es la cantidad',
  amount: 'cuánto hay, por ejemplo 5',
  unit: 'una unidad',
  temperature: { us: 'la temperatura, por ejemplo 68', metric: 'la temperatura, por ejemplo 20' },
  cup: {
    us: 'las onzas de azúcar en una taza de EE. UU., por ejemplo 7',
    metric: 'los gramos de azúcar en una taza de EE. UU., por ejemplo 200',
  },
};
export const whichUnit: typeof English.whichUnit = (found) =>
  `¿Qué “${found}”: de EE. UU. o imperial? Elija la medida en la lista de unidades.`;

export const faultWords: typeof English.faultWords = (reason, units) =>
  ({
    'no-sugar': 'Las partes de azúcar deben ser más de 0.',
    'no-water': 'Las partes de agua deben ser más de 0.',
    'no-amount': 'La cantidad debe ser más de 0.',
    'too-much': 'Eso es más de un millón: es demasiado para calcular.',
    'temperature-out-of-range':
      units === 'us' ? 'La temperatura debe estar entre 32 y 140 °F.' : 'La temperatura debe estar entre 0 y 60 °C.',
    'impossible-cup': `Una taza de EE. UU. de azúcar pesa más de 0 ${units === 'us' ? `oz y como máximo ${formatNumber(13.2, { places: 1 })} oz` : 'g y como máximo 376 g'}.`,
    'too-thick': 'Con tanto azúcar para tan poca agua no hay jarabe: tendría más de 85 % de azúcar.',
  })[reason];

export const headline: typeof English.headline = ({ sugarKg, waterKg, syrupLitres, graining }, units) => {
  const made = `${weightAlone(sugarKg, units)} de azúcar y ${weightAlone(waterKg, units)} de agua dan ${volumeAlone(syrupLitres, units)} de jarabe.`;
  return graining.state === 'cannot-all-dissolve' ? `Tanto azúcar no se puede disolver todo. Si se disolviera: ${made}` : made;
};

const known = { sugar: 'azúcar', water: 'agua', syrup: 'jarabe' };
const byWords = { weight: 'por peso', volume: 'por volumen', 'kilograms-to-litres': 'kg a L' };

export const questionWords: typeof English.questionWords = (mixed) =>
  `${three(mixed['sugar-parts'])}:${three(mixed['water-parts'])} ${byWords[mixed.by]}, para ${three(mixed.amount)} ${mixed.unit === 'oz' ? 'oz' : unitChoices[mixed.unit]} de ${known[mixed.know]}`;

export const kitchenWords: typeof English.kitchenWords = (mixed, { sugarKg, waterLitres, syrupLitres }, units) => {
  const cups = mixed.by === 'volume' ? kitchenCups((sugarKg * 1000) / mixed['sugar-per-cup']) : undefined;
  const [sugar, water, syrup] = [
    cups ?? kitchenWeight(sugarKg, units),
    kitchenVolume(waterLitres, units),
    kitchenVolume(syrupLitres, units),
  ];
  if (!sugar || !water || !syrup) return '';
  return `Para medir: azúcar, ${sugar}; agua, ${water}. Jarabe que sale: ${syrup}.`;
};

export const grainingWords: typeof English.grainingWords = (graining, units) => {
  switch (graining.state) {
    case 'never':
      return 'Es demasiado ligero para cristalizar sobre el punto de congelación.';
    case 'cannot-all-dissolve':
      return 'No se puede disolver todo.';
    case 'below':
      return `Puede empezar a cristalizar en algún punto desde ${temperatureRange(graining.leastC, graining.mostC, units)} hacia abajo.`;
    case 'below-modern-only':
      return `Puede empezar a cristalizar por debajo de ${temperatureWords(graining.mostC, units)}. Solo la más nueva de dos líneas llega tan lejos.`;
  }
};

export const sumWords: typeof English.sumWords = (mixed, { brix, syrupKg, syrupLitres, kgPerLitre }, units) => {
  const inCup = (grams: number): string => three(smallWeight.boxes[units].fromFixed(grams));
  const [sugar, water, cup, waterCup] = [
    three(mixed['sugar-parts']),
    three(mixed['water-parts']),
    inCup(mixed['sugar-per-cup']),
    inCup(236),
  ];
  const small = units === 'us' ? 'oz' : 'g';
  const share = three(brix);
  const byParts = {
    weight: `100 × ${sugar} ÷ (${sugar} + ${water}) = ${share} % de azúcar por peso.`,
    volume: `En una taza de EE. UU. caben ${cup} ${small} de azúcar o cerca de ${waterCup} ${small} de agua: 100 × ${sugar} × ${cup} ÷ (${sugar} × ${cup} + ${water} × ${waterCup}) = ${share} % de azúcar por peso.`,
    'kilograms-to-litres': `${sugar} kg a ${water} L es ${share} % de azúcar por peso.`,
  }[mixed.by];
  return `${byParts} Los pesos se suman, los volúmenes no: ${weightAlone(syrupKg, units)} de jarabe ÷ ${densityAlone(kgPerLitre, units)} = ${volumeAlone(syrupLitres, units)}.`;
};

export const useMoreWater = 'Use más agua. Dos partes de azúcar por una de agua, por peso, es lo más espeso que la gente suele dar.';
export const feedInside = 'Dé el alimento dentro de la colmena, al atardecer. Nunca mientras haya alzas para la cosecha.';
export const nextLook: typeof English.nextLook = (day) => `Próxima mirada al alimentador: ${day}.`;

export const sugarByWeight: typeof English.sugarByWeight = (percent) => `${percent} % de azúcar por peso`;
export const sugarStrength: typeof English.sugarStrength = (strength) => `Azúcar: ${strength}`;
export const toMost: typeof English.toMost = (most) => `a ${most}`;
export const between = 'Puede empezar a cristalizar en algún punto entre las dos, y por debajo.';

export const chartLabel =
  'Una escala de temperatura: el bloque más oscuro es donde el jarabe puede cristalizar, y la línea de rayas su temperatura.';
export const now = 'el jarabe ahora';

export const stepByStep = 'El ejemplo paso a paso, y una tabla';
export const asMixed: typeof English.asMixed = (warm) => `2 partes de azúcar por 1 de agua, por peso, a ${warm}.`;
export const usualMixesAt: typeof English.usualMixesAt = (warm) => `Mezclas comunes a ${warm}, primero el azúcar`;
export const usualMixes = 'Mezclas comunes';
export const mixNames: typeof English.mixNames = {
  '1:1-weight': '1 a 1 por peso',
  '1:1-volume': '1 a 1 por volumen',
  '1kg-630ml': '1 kg a 630 mL, como en Gran Bretaña',
  '2:1-volume': '2 a 1 por volumen',
  '2:1-weight': '2 a 1 por peso',
};
export const table: typeof English.table = {
  mix: 'Mezcla',
  byWeight: 'Azúcar por peso',
  inVolume: { us: 'Azúcar en un galón de EE. UU.', metric: 'Azúcar en un litro' },
  grainsBelow: 'Puede cristalizar por debajo de',
  doesNotGrain: 'no cristaliza',
};
export const outputs: typeof English.outputs = {
  heading: 'Las cantidades',
  sugar: 'Azúcar',
  water: 'Agua',
  syrup: 'Jarabe',
  strength: 'Concentración',
};

export const basis = [
  'Los pesos se suman. Los volúmenes salen de la densidad del azúcar en agua a la temperatura que usted da. Dos líneas publicadas dicen cuándo sale azúcar de un jarabe. Difieren en algunos grados, por eso se muestran los dos extremos.',
  'Por volumen, el azúcar se pesa por taza: {cup} aquí, {span} en lo publicado. Así que por volumen la concentración vale con un margen de cerca de 5 %.',
];
export const limits = [
  'Vale solo para azúcar blanco granulado y agua sola.',
  'Un jarabe en el límite puede tardar en cristalizar, o empezar en un grano de azúcar. Úselo pronto.',
  'Quite el agua del fuego antes de poner el azúcar. Desde {hmf} un azúcar se descompone en HMF, que daña a las abejas. No ponga vinagre ni crémor tártaro.',
  'No dé jarabe mientras haya alzas para la cosecha.',
  'Dé el alimento dentro de la colmena, al atardecer, con una entrada pequeña: el jarabe atrae el pillaje.',
  'Cerca de {cold} las abejas dejan el alimento líquido.',
  'No dice cuánto necesita una colmena.',
];
