import type { Language } from '../../../shared/country/language.ts';
import { formatDay, formatDayRange, formatDayWithWeekday } from '../../../shared/days/show-day.ts';
import { formatNumber } from '../../../shared/numbers/show-number.ts';
import type { DayPair } from '../../../shared/packages/calendar.ts';
import { converted } from '../form/measures.ts';
import { packageWeight, perWeight, shownIn } from '../form/units.ts';
import { whole } from './bees.ts';
import type * as English from './text.en.ts';

export const fields: typeof English.fields = {
  installed: 'Día en que instala el paquete',
  such: (day) => `Por ejemplo ${day}`,
  shaken: 'Día en que se sacudieron las abejas, si lo sabe',
  leftEmpty: (days) => `Si lo deja vacío, se toma ${days} días antes.`,
  weight: 'Peso',
  beesPer: { us: 'Abejas en una libra', metric: 'Abejas en un kilogramo' },
  queen: 'La reina',
  candy: 'Detrás del dulce',
  released: 'Suelta al instalar',
  comb: 'Sobre',
  drawn: 'Panal construido',
  foundation: 'Cera estampada',
};

export const what: typeof English.what = {
  installed: 'el día en que instala el paquete',
  shaken: 'el día en que se sacudieron las abejas',
  pounds: {
    us: 'el peso de la etiqueta, por ejemplo 3',
    metric: `el peso de la etiqueta, por ejemplo ${formatNumber(1.36, { places: 2 })}`,
  },
  queen: 'cómo sale la reina',
  comb: 'sobre qué se ponen las abejas',
  beesPer: {
    us: 'cuántas abejas hay en una libra, por ejemplo 3500',
    metric: 'cuántas abejas hay en un kilogramo, por ejemplo 7700',
  },
};

export const faultWords: typeof English.faultWords = (reason, units) =>
  ({
    'shaken-after-install': 'Las abejas no pueden haberse sacudido después de instalarlas.',
    'shaken-too-long-ago': 'Hay más de 21 días entre el día en que se sacudieron y el de la instalación. Revise los dos días.',
    'no-weight': 'El peso debe ser más de 0.',
    'no-bees-per-pound': `Las abejas en ${units === 'us' ? 'una libra' : 'un kilogramo'} deben ser más de 0.`,
    'too-much':
      units === 'us'
        ? `Un paquete pesa como máximo 20 lb, con ${whole(10_000)} abejas por libra como máximo.`
        : `Un paquete pesa como máximo 9 kg, con ${whole(22_000)} abejas por kilogramo como máximo.`,
  })[reason];

export const noFigure = 'No hay cifra para esta asociación.';
export const notNeeded = 'No hace falta: la reina se soltó al instalar el paquete.';
export const notInEightWeeks = 'No en las primeras ocho semanas.';

export const headline: typeof English.headline = (given, plan, language) => {
  const young = plan.firstBees ? ` Las primeras abejas jóvenes salen ${rangeWords(plan.firstBees, language)}.` : '';
  return `Un paquete instalado el ${formatDay(given.installed, language)}.${young}`;
};

export const questionWords: typeof English.questionWords = (given, { units }, language) => {
  const weight = `${shownIn(packageWeight, given.pounds, units)} ${units === 'us' ? 'lb' : 'kg'}`;
  return `Un paquete de ${weight}, instalado el ${formatDay(given.installed, language)}, ${given.queen === 'candy' ? 'con la reina detrás del dulce' : 'con la reina suelta'}, sobre ${given.comb === 'drawn' ? 'panal construido' : 'cera estampada'}`;
};

const rangeWords = ({ earliest, latest }: DayPair, language: Language): string =>
  earliest === latest ? `el ${formatDay(earliest, language)}` : `del ${formatDayRange(earliest, latest, language)}`;

export const noEggsWords: typeof English.noEggsWords = ({ lookAgain, requeen }, language) =>
  [
    ...(lookAgain ? [`Si ${rangeWords(lookAgain, language)} no hay huevos, revise otra vez y pregunte.`] : []),
    ...(requeen ? [`Si ${rangeWords(requeen, language)} todavía no hay, ponga una reina o una las abejas a otra colonia.`] : []),
  ].join(' ');

export const noCurveWords: typeof English.noCurveWords = ({ noCurve }, { trialBees }) => {
  if (noCurve !== 'beyond-trials' || !trialBees) return noFigure;
  return `Los ensayos tenían de ${whole(trialBees.least)} a ${whole(trialBees.most)} abejas, así que no se dice nada para este número.`;
};

export const sumWords: typeof English.sumWords = (given, plan, { units }, language) => {
  const weight = shownIn(packageWeight, given.pounds, units);
  const each = converted(perWeight.boxes[units].fromFixed(given['bees-per-pound']));
  const [short, long] = units === 'us' ? ['lb', 'libra'] : ['kg', 'kilogramo'];
  const begun = `${weight} ${short} × ${each} abejas por ${long} = ${whole(plan.beesAtStart)} abejas cuando se sacudieron.`;
  if (!plan.firstEggs || !plan.release) return begun;
  const out =
    given.queen === 'candy' ? `La reina sale ${rangeWords(plan.release, language)}.` : 'La reina se soltó al instalar el paquete.';
  return `${begun} ${out} Hay primeros huevos ${rangeWords(plan.firstEggs, language)}. Las celdas se tapan de 8 a 9 días después del huevo; la abeja sale el día 21.`;
};

export const next: typeof English.next = (event, earliest, latest, today, language) =>
  `Sigue: ${event.toLowerCase()}, ${earliest > today ? `desde el ${formatDayWithWeekday(earliest, language)}` : `a más tardar el ${formatDayWithWeekday(latest, language)}`}.`;
export const nextCount: typeof English.nextCount = (day) => `Próximo conteo de ácaros: a más tardar el ${day}.`;
export const toDay: typeof English.toDay = (day) => `hasta el ${day}`;
export const earliestOnly: typeof English.earliestOnly = (day) => `${day}, lo más temprano`;

export const beesBetween: typeof English.beesBetween = (least, most) => `${least} a ${most}`;
export const toMost: typeof English.toMost = (most) => `a ${most}`;
export const fewest: typeof English.fewest = (least, most, start) =>
  `De ${least} a ${most} abejas en el punto más bajo, de ${start} que se sacudieron.`;

export const atStart: typeof English.atStart = (bees) => `al inicio: ${bees}`;
export const chartLabel =
  'Abejas en la colmena, día por día desde la instalación, como una banda entre una mala marcha y una buena. La línea de rayas es el número del inicio. La tabla de abajo lo da semana por semana.';

export const events: typeof English.events = {
  'queen-look': { what: 'Mire si la reina ya salió', why: 'Una revisión corta. Quite la jaula si está vacía.' },
  'egg-look': { what: 'Busque huevos', why: 'Los huevos dicen que la reina pone. Se cuenta desde que salió.' },
  capped: { what: 'Primeras celdas tapadas', why: 'Tapas planas sobre cría de obrera: todo va bien.' },
  'first-bees': { what: 'Primeras abejas jóvenes', why: 'Hasta entonces hay menos abejas cada día.' },
  'low-point': { what: 'El menor número de abejas', why: 'Es de esperar. Deje la entrada pequeña y siga dando alimento.' },
  'back-to-start': { what: 'Tantas como al inicio', why: 'Desde aquí necesita espacio.' },
  'first-mite-count': { what: 'Primer conteo de ácaros', why: 'Los paquetes pueden traer ácaros.' },
};

export const stepByStep = 'El ejemplo paso a paso, y una tabla';
export const dates = 'Las fechas';
export const table: typeof English.table = { what: 'Qué', when: 'Cuándo', why: 'Por qué', day: 'Día', date: 'Fecha', bees: 'Abejas' };
export const weekByWeek = 'Abejas en la colmena, semana por semana';
export const beesShaken = 'Abejas cuando se sacudieron';
export const beesFewest = 'El menor número de abejas';
export const calendarFile = 'Archivo de calendario';
export const calendarName: typeof English.calendarName = (installed) => `Paquete del ${installed}`;
export const eventName: typeof English.eventName = (event, installed) => `${event} (paquete del ${installed})`;

export const theWork = 'El trabajo mismo: {lists}.';
export const restOn = 'En qué se basan las fechas';
export const basis = [
  'Las abejas sueltan a una reina a través del dulce en {release}.',
  'Los primeros huevos llegan {eggs} después de que sale, sobre panal construido. La cera estampada agrega {foundation}.',
  'Una celda de obrera se tapa el día {sealed}, y la obrera sale el día {emerged}.',
  'Sin abejas jóvenes, {survival} vivían 22 días después de sacudirlas.',
  'Abejas en una libra: {pound} aquí. Otros publican {others} y {more}.',
  'La puesta de la curva se ajusta a esos ensayos: {laying} como máximo. El panal es de memoria: {cells} celdas construidas.',
];
export const limits = [
  'Es la banda de un modelo, no un pronóstico. No sabe de clima, hambre, pillaje ni enfermedad.',
  'Ningún estudio da el día en que un paquete vuelve a su número del inicio. Esas fechas son solo de la banda.',
  'Una reina que falla cambia todas las fechas que siguen.',
  'Los ensayos se hicieron en Luisiana en abril. Una primavera fría es más lenta.',
  'Los paquetes traían {mites} ácaros cuando se tomaron muestras.',
];
