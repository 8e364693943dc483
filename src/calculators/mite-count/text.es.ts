import { spanishPhases } from '../../../shared/season/spanish.ts';
import { formatExact, formatNumber } from '../../../shared/numbers/show-number.ts';
import { onlyCorrected, rateWords, type Method } from './model.ts';
import type * as English from './text.en.ts';

const whole = (value: number): string => formatNumber(value, { places: 0 });
const listed = (names: readonly string[]): string => new Intl.ListFormat('es').format(names);

export const verdictNames: typeof English.verdictNames = { below: 'Por debajo', unsure: 'Dudoso', act: 'Actúe' };
export const atOnceShort = 'Ya';
const atOnceName = 'Actúe ya';
export const noVerdict = 'Sin resultado';

export const rangeWords: typeof English.rangeWords = (low, high, lines) => `${rateWords(low, lines)} a ${rateWords(high, lines)}`;

export const verdictWords: typeof English.verdictWords = (verdict, atOnce) =>
  verdict === undefined ? '' : atOnce ? atOnceName : verdictNames[verdict];

export const headline: typeof English.headline = (judgement) => {
  const { count, atOnce } = judgement;
  const [first] = count.colonies;
  const rate = (per100: number) => `${rateWords(per100, judgement)} ácaros por cada 100 abejas`;
  if (!count.verdict) return `${rate((count.apiary ?? first!).per100)}.`;
  const hurry = count.coloniesAtOnce.length > 0;
  if (!count.apiary)
    return `${rate(first!.per100)}: ${verdictWords(count.verdict, hurry).toLowerCase()}${count.verdict === 'below' ? ' del nivel' : ''}.`;
  if (hurry)
    return `Actúe ya: ${named(count.coloniesAtOnce, true)} en ${formatExact(atOnce!.levelPer100)} ácaros por cada 100 abejas, o por encima.`;
  const labels = count.colonies.filter(({ verdict }) => verdict === count.verdict).map(({ label }) => label);
  if (count.verdict === 'act') return `Actúe: ${named(labels, true)} en el nivel o por encima.`;
  if (count.verdict === 'below') return 'Todas las colonias están por debajo del nivel, y también en conjunto.';
  return labels.length > 0
    ? `Dudoso: ${named(labels)} ${labels.length === 1 ? 'puede' : 'pueden'} estar por encima del nivel.`
    : 'Dudoso: en conjunto pueden estar por encima del nivel.';
};

function named(names: readonly string[], verb = false): string {
  const one = names.length === 1;
  const shown = names.length > 6 ? `${names.length} colonias` : one ? `la colonia ${names[0]}` : `las colonias ${listed(names)}`;
  return verb ? `${shown} ${one ? 'está' : 'están'}` : shown;
}

export const noLevel: typeof English.noLevel = ({ levels }, phase) =>
  levels.length === 0 || !phase ? 'Aquí no hay nivel.' : `No hay nivel para esta fase del año, ${spanishPhases[phase]}.`;

export const verdictReason: typeof English.verdictReason = ({ count, level, atOnce }) => {
  if (!level) return 'Sin un nivel no se puede decir si hay que actuar.';
  if (count.coloniesAtOnce.length > 0)
    return `El conteo es de ${formatExact(atOnce!.levelPer100)} por cada 100 abejas o más. No hay tiempo que perder.`;
  if (count.verdict === 'act') return 'El conteo está en el nivel o por encima.';
  if (count.verdict === 'below') return 'Todo el rango probable está por debajo del nivel.';
  if (count.colonies.every(({ mites }) => mites === 0))
    return 'No se encontró ningún ácaro, pero con tan pocas abejas no se puede descartar el nivel.';
  return onlyCorrected(count)
    ? 'Según el conteo está por debajo del nivel. Corregido por los ácaros no vistos, no lo está.'
    : 'El conteo está por debajo del nivel, pero su rango probable llega al nivel.';
};

export const levelRemarks: typeof English.levelRemarks = (level, { method, phase }) => {
  if (!level) return '';
  const part = phase ? '' : 'No se eligió una fase del año; por eso se usa el nivel más estricto. ';
  if (level.method === method) return part;
  return `${part}${level.method ? `Se fijó con otro método (${methodNames[level.method]}).` : 'No dice que se fijó con este método.'}`;
};

export const settleWords: typeof English.settleWords = (settle, counted, { mostBees }) => {
  if (!settle) return 'No hace falta.';
  const where = counted.length > 1 ? ` de la colonia ${settle.label}` : '';
  if (settle.bees === 'too-many') return `Harían falta más de ${whole(mostBees)} abejas${where}: más de las que una colonia debe dar.`;
  return `Unas ${whole(settle.bees)} abejas${where} en total, con esta tasa, darían la respuesta.`;
};

export const nextStep: typeof English.nextStep = ({ count, level }, { phase }) => {
  if (!level) return 'Anote el conteo. La asociación no tiene un nivel aquí; pregunte antes de tratar.';
  if (count.coloniesAtOnce.length > 0)
    return 'Trate en pocos días, según lo permitan su etiqueta, el tiempo y las alzas de miel. Cuente en todas las demás colmenas del apiario.';
  if (count.verdict === 'act')
    return 'Elija ahora un tratamiento que permitan su etiqueta, el tiempo y las alzas de miel. Cuente también en las otras colmenas.';
  if (count.verdict === 'unsure') {
    const settles = count.toSettle?.bees;
    if (typeof settles === 'number')
      return 'Tome hoy una segunda muestra de la misma colonia y sume las dos, o cuente otra vez en dos semanas.';
    return settles === 'too-many'
      ? 'Haga lo mismo que con “Actúe”, o cuente otra vez en dos semanas: si los ácaros aumentan, se verá entonces.'
      : 'Cuente otra vez en dos semanas.';
  }
  const late = phase === 'dearth' || phase === 'fall-preparation' ? ' En esta época del año también llegan ácaros de otras colmenas.' : '';
  return `Con este conteo no hace falta un tratamiento.${late}`;
};

export const nextCount: typeof English.nextCount = (day) =>
  day === undefined
    ? 'Próximo conteo: cuando termine el tiempo de tratamiento de su etiqueta. Anote ese día.'
    : `Próximo conteo: a más tardar el ${day}.`;

const methodNames: Readonly<Record<Method, string>> = {
  wash: 'lavado con alcohol',
  roll: 'prueba del azúcar en polvo',
  gas: 'dióxido de carbono',
};

export const askedWords: typeof English.askedWords = ({ samples, method, phase, recovery }) => {
  const [first] = samples;
  const counted =
    samples.length > 1
      ? `${samples.length} colonias`
      : `${first!.label ? `${first!.label}: ` : ''}${whole(first!.mites)} ${first!.mites === 1 ? 'ácaro' : 'ácaros'} en ${whole(first!.bees)} abejas`;
  const adjusted = recovery === 100 ? '' : `, ajustado para un ${formatExact(recovery)} % encontrado`;
  return `${counted}, ${methodNames[method]}, ${phase ? spanishPhases[phase] : 'fase del año sin elegir'}${adjusted}`;
};

export const noFigure = 'No hay cifra para esta asociación.';
export const weeksReasons: typeof English.weeksReasons = {
  'already-there': 'Ya se alcanzó.',
  'no-brood': 'Sin cría los ácaros no aumentan; por eso no hay fecha.',
  'no-level': 'Sin un nivel no hay fecha.',
  'no-mites': 'No se encontraron ácaros; por eso no se puede decir a más tardar cuándo.',
  weeks: '',
};

export const soonestWords: typeof English.soonestWords = (weeks, reached) => {
  if (weeks > 0) return `Lo antes posible, en ${inWeeks(weeks)}.`;
  return reached ? 'Puede que ya se haya alcanzado.' : 'Lo antes posible, dentro de una semana.';
};

export const latestWords: typeof English.latestWords = (weeks) =>
  weeks === 0 ? 'A más tardar, dentro de una semana.' : `A más tardar, en ${inWeeks(weeks)}.`;

const inWeeks = (weeks: number): string => `${whole(weeks)} ${weeks === 1 ? 'semana' : 'semanas'}`;

export const sumWords: typeof English.sumWords = (judgement, recovery) => {
  const { colonies, apiary } = judgement.count;
  const [first] = colonies;
  if (!apiary) {
    const corrected =
      first!.per100Corrected === undefined
        ? ''
        : ` Si solo se encontró el ${formatExact(recovery)} % de los ácaros: ${rateWords(first!.per100, judgement)} ÷ ${formatExact(recovery / 100)} = ${rateWords(first!.per100Corrected, judgement)}.`;
    return `100 × ${whole(first!.mites)} ÷ ${whole(first!.bees)} = ${rateWords(first!.per100, judgement)}. Un conteo de ${whole(first!.mites)} puede venir de una tasa real de ${rangeWords(first!.lowPer100, first!.highPer100, judgement)}.${corrected}`;
  }
  const all = (of: 'mites' | 'bees') =>
    colonies.length > 6 ? whole(colonies.reduce((sum, one) => sum + one[of], 0)) : `(${colonies.map((one) => whole(one[of])).join(' + ')})`;
  return `En conjunto: 100 × ${all('mites')} ÷ ${all('bees')} = ${rateWords(apiary.per100, judgement)}. Cada colonia, de la misma manera: 100 × ácaros ÷ abejas.`;
};

export const apiaryRemarks: typeof English.apiaryRemarks = (apiary, colonies, fewest) => {
  if (!apiary) return '';
  const range = {
    'log-limits': '',
    'all-zero': 'El rango cuando no hay ningún ácaro es el menos cuidadoso. ',
    'too-few-colonies': 'Un rango del conjunto necesita cuatro colonias o más. ',
  }[apiary.range];
  return (
    range +
    (fewest !== null && colonies < fewest ? `${colonies} colonias muestran mal un apiario: es mejor contar en ${fewest} o más.` : '')
  );
};

export const recovery: typeof English.recovery = {
  asked: `un porcentaje de 1 a 100, como ${formatExact(92.9)}`,
  impossible: 'El porcentaje de ácaros encontrados es mayor que 0 y llega como máximo a 100.',
};

export const cells: typeof English.cells = {
  corrected: 'corregido',
  to: 'a',
  upTo: (rate) => `a ${rate}`,
  miteInBees: (mites, bees) => `${whole(mites)} en ${whole(bees)}`,
  noRange: 'no hay con menos de cuatro colonias',
  per100: (level) => `${formatExact(level)} por cada 100 abejas`,
  noAtOnce: 'No hay para esta fase del año.',
  none: 'Ninguna',
};

export const chart: typeof English.chart = {
  all: 'Todas',
  level: (per100) => `nivel de la asociación, ${formatExact(per100)}`,
  label:
    'Ácaros por cada 100 abejas: una marca es el conteo, la línea que la cruza es su rango probable y la línea de trazos es el nivel. La tabla tiene los mismos números.',
};

export const fields: typeof English.fields = {
  rows: 'Una línea por colonia. Los nombres son opcionales.',
  phaseWithLevels:
    'Se elige según la fecha de hoy. Puede cambiarla. Si no se elige ninguna, cuenta el nivel más estricto de la asociación.',
  more: 'Más opciones',
  moreOf: 'ácaros no vistos',
  recovery: 'Ajustar por los ácaros no vistos, %',
  recoveryHint: 'Deje 100 para no ajustar.',
};

export const result: typeof English.result = {
  heading: 'Ácaros por cada 100 abejas',
  chart: 'Una marca es el conteo, y la línea que la cruza es el rango probable.',
  numbers: 'Los números',
  table: 'Cada colonia',
  colony: 'Colonia',
  mites: 'Ácaros',
  per100: 'Por cada 100',
  range: 'Rango probable',
  verdict: 'Resultado',
  all: 'Todas',
  larger: 'Una muestra mayor',
  weeks: 'Semanas hasta el nivel, si no se hace nada',
};

export const levels: typeof English.levels = {
  followed: 'El nivel que sigue la asociación',
  atOnce: 'Actúe ya desde',
  over: 'Colonias en el nivel o por encima',
};

export const allYear = 'todo el año';

export const example: typeof English.example = {
  worked: (mites, bees, phase) => `${mites} ácaros en un lavado de ${bees} abejas${phase ? `, en la fase ${phase}` : ''}.`,
  level: (per100) => `La asociación sigue entonces el nivel de ${formatExact(per100)} por cada 100 abejas{source}.`,
  next: (step) => `**Qué hacer ahora:** ${step}`,
  table: (bees) => `Ácaros en ${bees} abejas`,
  verdictAt: (per100) => `Resultado, nivel ${formatExact(per100)}`,
};

export const background: typeof English.background = {
  noLevel: 'Aquí no hay nivel',
  noVerdict: (asked) =>
    `No encontramos un nivel para este lugar. Por eso esta página calcula el conteo y su rango probable, pero no dice si hay que actuar. Pregunte desde qué conteo se actúa: ${asked ?? 'a apicultores con experiencia de su zona'}.`,
  how: 'Cómo se encuentra el resultado',
  atOnce: '**Actúe ya:** el conteo es tan alto que no hay tiempo que perder.',
  verdicts: [
    '**Actúe:** el conteo está en el nivel o por encima.',
    '**Dudoso:** el conteo está por debajo del nivel, pero el rango probable llega a él.',
    '**Por debajo:** todo el rango probable está por debajo del nivel.',
    'De varias colonias decide la peor, para que un promedio no oculte ninguna.',
    'Una corrección por los ácaros no vistos nunca hace más suave el resultado.',
    'Con un nivel de 1, una muestra de 300 abejas es demasiado pequeña para “Por debajo”, aunque no tenga ningún ácaro.',
  ],
  most: (bees) => `A ninguna colonia se le piden más de ${bees} abejas.`,
  levels: '**Los niveles de la asociación:** {levels}.',
  levelIn: (phases) => `{level} en ${phases.join(', ')}`,
  range:
    'El rango probable contiene la tasa real 19 veces de cada 20. Para una colonia son los límites exactos de un conteo. Para el conjunto tiene en cuenta que los ácaros se juntan en algunas colonias.',
  growth: (slowest, fastest) => `Las semanas salen de dos tasas de aumento, ${slowest} y ${fastest} % al día{source}.`,
  others: 'Niveles que usan otros grupos',
  differ: 'Son distintos porque los lugares, los años y los métodos lo son. La asociación usa el suyo.',
  otherIn: (phases) => `{level} ${phases ? `en ${listed(phases)}` : allYear}:`,
};
