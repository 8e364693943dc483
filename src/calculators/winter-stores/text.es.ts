import { exactNumber, formatNumber } from '../../../shared/numbers/show-number.ts';
import { kitchenVolumes, kitchenWeight } from '../../../shared/units/kitchen.ts';
import { kilogramsToPounds } from '../../../shared/units/weight.ts';
import { spanWords, strengthAlone, three, volumeAlone, weightAlone } from '../form/measures.ts';
import { frames, type Frame, type Hive, type HiveReason, type StoresFigures } from './model.ts';
import type * as English from './text.en.ts';

export const fields: typeof English.fields = {
  onScale: 'La colmena en una báscula',
  fillThis: {
    us: 'Llene esto, o los cuadros de abajo. Puede escribir 59 kg.',
    metric: 'Llene esto, o los cuadros de abajo. Puede escribir 130 lb.',
  },
  whole: 'Colmena entera',
  empty: 'Colmena vacía',
  orFrames: 'O cuadros llenos de miel',
  halves: 'Cuente dos cuadros medio llenos como uno. Puede usar mitades: 5½.',
  deep: 'Profundos',
  medium: 'Medianos',
  shallow: 'Bajos',
  wanted: 'Reservas que se quieren',
  noTarget: 'La asociación no tiene cifra. Pregunte, y escriba la suya.',
  ofClub: 'Esta es la cifra de la asociación. Puede cambiarla.',
  mix: 'Jarabe que va a dar, primero el azúcar',
};

export const what: typeof English.what = {
  whole: { us: 'cuánto pesa la colmena entera, por ejemplo 130', metric: 'cuánto pesa la colmena entera, por ejemplo 59' },
  empty: {
    us: 'cuánto pesa la colmena sin abejas ni reservas, por ejemplo 80',
    metric: 'cuánto pesa la colmena sin abejas ni reservas, por ejemplo 36',
  },
  target: { us: 'las reservas que se quieren, por ejemplo 60', metric: 'las reservas que se quieren, por ejemplo 27' },
  frames: {
    deep: 'cuántos cuadros profundos de miel hay, por ejemplo 5 o 5½',
    medium: 'cuántos cuadros medianos de miel hay, por ejemplo 5 o 5½',
    shallow: 'cuántos cuadros bajos de miel hay, por ejemplo 5 o 5½',
  },
  mix: 'una mezcla',
};

export const faultWords: typeof English.faultWords = (reason, units) => {
  const most = units === 'us' ? `${formatNumber(2200, { places: 0 })} lb` : `${formatNumber(1000, { places: 0 })} kg`;
  const faults: Partial<Record<HiveReason, string>> = {
    'nothing-given': 'Escriba cuánto pesa la colmena, o cuántos cuadros de miel hay.',
    'both-ways': 'Escriba los pesos o los cuadros, no los dos. Deje vacíos los otros.',
    'no-gross': `Escriba ${what.whole[units]}.`,
    'no-empty': `Escriba ${what.empty[units]}.`,
    'impossible-weight': `Una colmena pesa de 0 a ${most}.`,
    'empty-heavier-than-gross': 'La colmena vacía no puede pesar más que la entera.',
    'impossible-frames': 'Los cuadros son de 0 a 100.',
    'no-target': `Las reservas que se quieren deben ser más de 0 y como máximo ${most}.`,
  };
  return faults[reason];
};

export const noFigure = 'No hay cifra para esta asociación.';
export const noneNeeded = 'No hace falta';
export const nothing = 'Nada';
export const toMost: typeof English.toMost = (most) => `a ${most}`;
export const verdicts: typeof English.verdicts = { short: 'Falta', enough: 'Alcanza' };

export const mixNames: typeof English.mixNames = {
  '1:1-weight': '1 a 1 por peso',
  '3:2-weight': '3 a 2 por peso',
  '2:1-weight': '2 a 1 por peso',
  '2:1-volume': '2 a 1 por volumen',
  '1kg-630ml': '1 kg a 630 mL',
};

export const headline: typeof English.headline = (hive, { storesKg, shortKg, feed }, { units }) => {
  if (storesKg === undefined || shortKg === undefined) return 'No hay cifra para la miel de estos cuadros.';
  const held = weightAlone(storesKg, units);
  if (shortKg === 0) return `${held} de reservas: alcanza para los ${weightAlone(hive['target-kg'], units)} que se quieren.`;
  const short = `Faltan ${weightAlone(shortKg, units)}.`;
  return feed
    ? `${short} Eso es ${spanWords(feed.syrupLitresLeast, feed.syrupLitresMost, (litres) => volumeAlone(litres, units))} de jarabe.`
    : short;
};

const kindWords: Readonly<Record<Frame, string>> = { deep: 'profundos', medium: 'medianos', shallow: 'bajos' };

export const questionWords: typeof English.questionWords = (hive, units) => {
  const counted = frames.flatMap((kind) => (hive[kind] ? [`${three(hive[kind])} ${kindWords[kind]}`] : [])).join(', ') || '0';
  const now =
    hive['gross-kg'] !== undefined && hive['empty-kg'] !== undefined
      ? `${weightAlone(hive['gross-kg'], units)} entera, ${weightAlone(hive['empty-kg'], units)} vacía`
      : `Cuadros de miel: ${counted}`;
  return `${now}; se quieren ${weightAlone(hive['target-kg'], units)}; jarabe ${mixNames[hive.mix]}`;
};

export const kitchenWords: typeof English.kitchenWords = ({ shortKg, feed }, { units }) => {
  const syrup = feed && shortKg !== 0 ? kitchenVolumes(feed.syrupLitresLeast, feed.syrupLitresMost, units) : undefined;
  const sugar = feed && kitchenWeight(feed.sugarKgMost, units);
  return syrup && sugar ? `Para medir, jarabe: ${syrup}. Azúcar que debe tener a mano: ${sugar}.` : '';
};

export const sumWords: typeof English.sumWords = (hive, stores, figures) => {
  const { units, feeding } = figures;
  const weight = (kg: number) => weightAlone(kg, units);
  const inUnits = (kg: number) => three(units === 'us' ? kilogramsToPounds(kg) : kg);
  const { storesKg, shortKg, feed } = stores;
  const held = storesKg === undefined ? 'no hay cifra para esta asociación' : weight(storesKg);
  const now =
    stores.from === 'weights'
      ? `${weight(hive['gross-kg']!)} − ${weight(hive['empty-kg']!)} = ${held}.`
      : `${frameWords(hive, figures)} = ${held}.`;
  if (shortKg === undefined) return now;
  const target = weight(hive['target-kg']);
  if (shortKg === 0) return `${now} Se quieren ${target}: no falta nada.`;
  const lacks = `Se quieren ${target} − ${weight(storesKg!)} = faltan ${weight(shortKg)}.`;
  if (!feed || !feeding) return `${now} ${lacks} Cuánto guardan las abejas del azúcar que se les da: ${noFigure.toLowerCase()}`;
  const sugar = (efficiency: number, kg: number) =>
    `${inUnits(shortKg)} × ${exactNumber(feeding.sugarShareOfStores)} ÷ ${formatNumber(efficiency, { places: 2 })} = ${weight(kg)} de azúcar`;
  return `${now} ${lacks} Si se guarda todo lo que se da: ${sugar(feeding.efficiencyMost, feed.sugarKgLeast)}. Según la regla de la práctica: ${sugar(feeding.efficiencyLeast, feed.sugarKgMost)}. El jarabe de ${mixNames[hive.mix]} tiene ${strengthAlone(feed.sugarKgLeast / feed.syrupLitresLeast, units)}.`;
};

function frameWords(hive: Hive, { frameKg, units }: StoresFigures): string {
  const each = (kind: Frame): string => (frameKg[kind] === null ? 'sin cifra' : weightAlone(frameKg[kind], units));
  return (
    frames.flatMap((kind) => (hive[kind] ? [`${three(hive[kind])} ${kindWords[kind]} × ${each(kind)}`] : [])).join(' + ') || '0 cuadros'
  );
}

export const lateForSyrup =
  'Aquí ya es tarde para el jarabe. Las abejas a las que ahora les falta alimento necesitan azúcar seco o pasta de azúcar (fondant) sobre el racimo de abejas.';
export const allBy: typeof English.allBy = (when) => `Todo debe estar en la colmena a más tardar en esta fecha: ${when}`;
export const weighBefore: typeof English.weighBefore = (when) => `Pese otra vez antes de esta fecha: ${when}`;
export const nextLook: typeof English.nextLook = (day) => `Próxima mirada: ${day}.`;

export const outputs: typeof English.outputs = {
  now: 'Reservas ahora',
  short: 'Lo que falta',
  sugar: 'Azúcar que hay que dar',
  syrup: 'Como jarabe',
  fedBy: 'Dado a más tardar',
};
export const chartLabel =
  'Una barra de las reservas que hay, y luego de lo que falta, hasta la línea de rayas de lo que se quiere. Los mismos números están abajo.';
export const wanted = 'se quiere';

export const stepByStep = 'El ejemplo paso a paso, y una tabla';
export const exampleFrames = '5 cuadros profundos y 4 medianos de miel.';
export const makesUp = 'Con qué se cubre lo que falta';
export const table: typeof English.table = { short: 'Falta', sugar: 'Azúcar', syrup: 'Como jarabe de 2 a 1 por peso' };

export const basis =
  'Las reservas son azúcar con un poco de agua: {share} de su peso es azúcar. Lo menor vale si las abejas guardan todo el azúcar que se les da. Lo mayor es la regla de la práctica, donde se comen una parte en el camino.';
export const checks = [
  'Miel en un cuadro lleno: profundo {deep}, mediano {medium}, bajo {shallow}.',
  'Una comprobación publicada: cuando faltaban 10 kg (22 lb), se usaron {swiss} de jarabe de 3 a 2.',
  'Otra: un galón de EE. UU. de 2 a 1 agrega {gallon}, contra {ideal} en el mejor caso.',
];
export const others: typeof English.others = {
  heading: 'Reservas que usan otros grupos',
  theyDiffer: 'Son distintas, porque los inviernos lo son. La asociación sigue {target}.',
  row: (place, source) => `${place}: {stores}. ${source}.`,
};
export const limits = [
  'Una báscula pesa también abejas, polen y cera. Por peso las reservas salen demasiado altas.',
  'Un cuadro que parece lleno puede no estarlo. Cuente dos medios cuadros como uno.',
  'Con frío o tarde se guarda menos que según la regla de la práctica: dé el alimento temprano.',
  'El último día para el jarabe: {day}',
  'Cerca de {cold} de día, es demasiado tarde para empezar.',
  'No dé jarabe mientras haya alzas para la cosecha.',
  'Solo azúcar blanco. Dé el alimento dentro de la colmena, al atardecer, con una entrada pequeña: el jarabe atrae el pillaje.',
];
export const theWork = 'El trabajo mismo: {lists}.';
