import { formatAgainst, formatExact, formatNumber } from '../../../shared/numbers/show-number.ts';
import type * as English from './text.en.ts';

export const noFigure = 'No hay cifra para esta asociación.';
export const whole: typeof English.whole = (value) => formatNumber(value, { places: 0 });

export const headline: typeof English.headline = ({ beesNeeded, coloniesLeast: least, coloniesMost: most }, { mostBees }) => {
  if (beesNeeded > mostBees) return `Harían falta más de ${whole(mostBees)} abejas de una colonia: más de las que debe dar.`;
  if (least === undefined || most === undefined) return `Mire ${beesWords(beesNeeded)} de una colonia.`;
  if (most === 1) return `Mire ${beesWords(beesNeeded)} de su colonia.`;
  return `Mire ${beesWords(beesNeeded)} de cada una de ${least === most ? whole(most) : `${whole(least)} a ${whole(most)}`} colonias.`;
};

export const cellWords: typeof English.cellWords = ({ beesNeeded }, { mostBees }) =>
  beesNeeded > mostBees ? `más de ${whole(mostBees)}` : whole(beesNeeded);

export const neededWords: typeof English.neededWords = (plan, figures) =>
  plan.beesNeeded > figures.mostBees ? `${cellWords(plan, figures)} abejas.` : beesWords(plan.beesNeeded);

const apiaryOf = (colonies: number | undefined): string =>
  colonies === undefined ? '' : `, ${whole(colonies)} ${colonies === 1 ? 'colonia' : 'colonias'}`;

export const askedWords: typeof English.askedWords = ({ share, certainty, colonies }) =>
  `Se quiere encontrar un ácaro ${formatExact(certainty)} veces de cada 100 donde el ${formatExact(share)} % de las abejas lleva uno${apiaryOf(colonies)}.`;

export const questionWords: typeof English.questionWords = ({ share, certainty, colonies }) =>
  `${formatExact(share)} % de las abejas con un ácaro, ${formatExact(certainty)} % de seguridad${apiaryOf(colonies)}`;

export const beesWords: typeof English.beesWords = (bees) => `${whole(bees)} ${bees === 1 ? 'abeja' : 'abejas'}`;

export const missedWords: typeof English.missedWords = (percent, { certainty }) =>
  `${formatAgainst(percent, Number((100 - certainty).toPrecision(12)), 1)} %`;

export const samplesWords: typeof English.samplesWords = ({ beesNeeded }, { usualBees, mostBees }) => {
  if (beesNeeded > mostBees)
    return `Es más de lo que una colonia debe dar: no tome más de ${whole(mostBees)}. Pida un porcentaje mayor o menos seguridad, o tome ahora una muestra normal de ${whole(usualBees)} y otra en dos semanas.`;
  const samples = Math.ceil(beesNeeded / usualBees);
  return samples === 1
    ? `Basta una muestra normal de ${whole(usualBees)}.`
    : `Son ${whole(samples)} muestras normales de ${whole(usualBees)}.`;
};

export const noColonies: typeof English.noColonies = (colonies) =>
  colonies === undefined ? 'Escriba arriba cuántas colonias hay.' : noFigure;
export const upTo: typeof English.upTo = (colonies) => `a ${whole(colonies)}`;

export const sumWords: typeof English.sumWords = (asked, { beesNeeded, missedPercent }) => {
  const { share, certainty } = asked;
  if (share === 100) return 'Todas las abejas llevan uno; por eso la primera abeja lo muestra.';
  const clean = formatExact(1 - share / 100);
  return `Una abeja sin ácaro sale con una probabilidad de ${clean}. ${whole(beesNeeded)} abejas así seguidas: ${clean} elevado a ${whole(beesNeeded)} = ${formatExact(Number((missedPercent / 100).toPrecision(3)))}, o ${missedWords(missedPercent, asked)}. Con una abeja menos fallaría más a menudo que el ${formatExact(100 - certainty)} % permitido.`;
};

export const says: typeof English.says = {
  tooMany: (usualBees) => `Tome ahora ${whole(usualBees)} abejas y otra muestra en dos semanas. Sume las dos.`,
  sample: 'Tome muestras de todas las colonias el mismo día. Después escriba lo que contó.',
};
export const again: typeof English.again = {
  tooMany: (day) => `Segunda muestra: ${day}.`,
  sample: (day) => `Próxima ronda de conteos: a más tardar el ${day}.`,
};

export const asked: typeof English.asked = {
  share: 'el porcentaje de abejas con un ácaro, como 1',
  certainty: 'qué seguridad quiere, como 95',
  colonies: 'cuántas colonias hay en el apiario',
};

export const faults: typeof English.faults = {
  'impossible-share': 'El porcentaje es mayor que 0 y llega como máximo a 100 %.',
  'impossible-certainty': 'Es mayor que 0 y menor que 100 %. Ninguna muestra da una seguridad total.',
  'no-colonies': 'Escriba 1 colonia o más, o déjelo vacío.',
  'colonies-not-whole': 'Escriba un número entero de colonias.',
};
export const tooRare: typeof English.tooRare = (percent) =>
  `Menos del ${formatExact(percent)} % no se puede encontrar con las abejas de una sola colonia.`;

export const chart =
  'Una barra por cada número de abejas: de 100 muestras así, tantas no encuentran ningún ácaro. La línea de trazos es lo que usted permite.';

export const fields: typeof English.fields = {
  share: 'Con un ácaro, %',
  shareHint: 'De todas las abejas.',
  certainty: 'Seguridad, %',
  certaintyHint: '95: 19 de cada 20.',
  colonies: 'Colonias en el apiario',
  coloniesHint: 'Puede dejarlo vacío.',
};

export const result: typeof English.result = {
  heading: 'Los números',
  bees: 'Abejas de una colonia',
  missed: 'Muestras como esta que aun así no encuentran ningún ácaro',
  colonies: 'Colonias de las que tomar muestras',
  chart: 'Con qué frecuencia falla una muestra',
  axes: 'A la izquierda, las abejas. Abajo, las muestras de cada 100 que no encuentran ningún ácaro.',
};

export const example: typeof English.example = {
  axes: 'A la izquierda, las abejas de una muestra. Abajo, las muestras de cada 100 que no encuentran ningún ácaro.',
  table: 'Abejas que mirar en una colonia',
  share: 'Con un ácaro',
  sure: (certainty) => `${formatExact(certainty)} % de seguridad`,
  most: ({ usualBees, mostBees }) =>
    `Ninguna colonia debe dar más de ${whole(mostBees)} abejas. Tome ${whole(usualBees)} ahora, y ${whole(usualBees)} más en dos semanas.`,
};

export const background: typeof English.background = {
  draw: 'Cada abeja se toma como sacada al azar de una colonia bien mezclada. El número es el menor con el que muchas abejas seguidas sin ácaro son lo bastante raras.',
  colonies:
    'Las colonias siguen dos costumbres publicadas. Un estudio encontró que {least} bastan, por grande que sea el apiario. Un plan nacional las pide todas si son menos de diez, y si no {most}.',
};
