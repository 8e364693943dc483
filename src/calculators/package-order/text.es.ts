import { formatNumber, toDataValue } from '../../../shared/numbers/show-number.ts';
import { converted, three, volumeWords } from '../form/measures.ts';
import { canVolume, perWeight } from '../form/units.ts';
import { inUnits, longestHours, weightOf, whole } from './model.ts';
import type * as English from './text.en.ts';

const tenths = (value: number): string => formatNumber(value, { places: 1 });

export const fields: typeof English.fields = {
  ordered: 'Qué se pide',
  oneLine: 'Una línea por cada peso.',
  firstLine: 'Línea 1',
  packages: 'Paquetes',
  weightOfOne: 'Peso de uno',
  removeFirst: 'Quitar línea 1',
  addLine: 'Agregar una línea',
  pasteList: 'Pegar una lista',
  fromSpreadsheet: { us: 'De una hoja de cálculo: paquetes, libras', metric: 'De una hoja de cálculo: paquetes, kilogramos' },
  listHint: 'Una línea cada uno, por ejemplo 10 3. Separe las columnas con un tabulador, una coma o un espacio.',
  beesPer: { us: 'Abejas en una libra', metric: 'Abejas en un kilogramo' },
  spare: 'Reinas de reserva',
  supplier: 'Pregunte al proveedor',
  canBeEmpty: 'Puede dejar esto vacío. Entonces esos resultados no salen.',
  allowance: 'Sobre la etiqueta, %',
  forDeaths: 'Se pone por las muertes.',
  hours: 'Horas de camino',
  sheetOnly: 'Solo para la hoja.',
  cage: 'Jaula vacía',
  withQueenCage: 'Con la jaula de la reina.',
  can: 'Lata llena',
  withSyrup: 'Con su jarabe.',
  syrup: 'Jarabe en una lata',
  syrupUnit: { us: 'cuartos de EE. UU.', metric: 'L' },
  youCanType: { us: 'Puede escribir ½ gal EE. UU.', metric: 'Puede escribir 750 mL.' },
};

export const what: typeof English.what = {
  packages: 'cuántos paquetes',
  pounds: { us: 'el peso de uno, por ejemplo 3', metric: `el peso de uno, por ejemplo ${formatNumber(1.36, { places: 2 })}` },
  allowance: 'lo que se pone sobre la etiqueta, por ejemplo 10',
  hours: 'las horas de camino, por ejemplo 5',
  beesPer: {
    us: 'cuántas abejas hay en una libra, por ejemplo 3500',
    metric: 'cuántas abejas hay en un kilogramo, por ejemplo 7700',
  },
  spare: 'cuántas reinas de reserva, o 0',
  cage: {
    us: `cuánto pesa una jaula vacía, por ejemplo ${tenths(1.5)}`,
    metric: `cuánto pesa una jaula vacía, por ejemplo ${tenths(0.7)}`,
  },
  can: { us: 'cuánto pesa una lata llena, por ejemplo 3', metric: `cuánto pesa una lata llena, por ejemplo ${tenths(1.4)}` },
  syrup: { us: 'el jarabe de una lata, por ejemplo 1', metric: 'el jarabe de una lata, por ejemplo 1' },
};
export const line = 'Línea';

export const askSupplier = 'Pregunte al proveedor.';

export const headline: typeof English.headline = ({ all }, { units }) =>
  `${whole(all.packages)} ${all.packages === 1 ? 'paquete' : 'paquetes'}: ${weightOf(all.netPounds, units)} de abejas, cerca de ${whole(all.bees)}.`;

export const questionWords: typeof English.questionWords = ({ lines }, units) => {
  const unit = units === 'us' ? 'lb' : 'kg';
  const shown = lines.slice(0, 4).map(({ count, pounds }) => `${whole(count)} × ${three(inUnits(pounds, units))} ${unit}`);
  return `${shown.join(' y ')}${lines.length > 4 ? ` y ${lines.length - 4} ${lines.length === 5 ? 'línea' : 'líneas'} más` : ''}`;
};

export const beesWords: typeof English.beesWords = (bees) => `cerca de ${whole(bees)}`;

export const queensWords: typeof English.queensWords = ({ queens }, spare) =>
  spare === 0 ? whole(queens) : `${whole(queens)}, ${whole(spare)} de ellas de reserva`;

export const syrupWords: typeof English.syrupWords = ({ syrupLitres }, units) =>
  syrupLitres === undefined ? askSupplier : volumeWords(syrupLitres, units);

export const roadWords: typeof English.roadWords = ({ hours, allowance, 'bees-per-pound': perPound }, units) => {
  const bees = `Se cuentan ${converted(perWeight.boxes[units].fromFixed(perPound))} abejas por ${units === 'us' ? 'libra' : 'kilogramo'}. `;
  const road = hours === undefined ? '' : `Cerca de ${three(hours)} ${hours === 1 ? 'hora' : 'horas'} de camino. `;
  return (
    bees +
    road +
    (allowance === undefined
      ? 'Cuánto se pone sobre la etiqueta por las muertes en el camino: pregunte al proveedor.'
      : `Se pone sobre la etiqueta por las muertes en el camino: ${three(allowance)} %.`)
  );
};

export const sheetsWords: typeof English.sheetsWords = ({ all }, { members }) => {
  const sheets = Math.ceil(all.packages / members);
  return sheets === 1
    ? `Una hoja tiene líneas para ${members} personas.`
    : `Una hoja tiene líneas para ${members} personas. Si cada una toma un paquete, imprima ${whole(sheets)} hojas.`;
};

export const sumWords: typeof English.sumWords = (ordered, { all }, units) => {
  const plain = (value: number): string => toDataValue(Number(value.toPrecision(6)));
  const weight = (pounds: number): string => three(inUnits(pounds, units));
  const [short, volume] = units === 'us' ? ['lb', 'cuartos de EE. UU.'] : ['kg', 'L'];
  const { lines, allowance, 'cage-lb': cage, 'can-lb': can, 'syrup-l-each': syrup, 'spare-queens': spare } = ordered;
  const net = `${lines.map(({ count, pounds }) => `${whole(count)} × ${weight(pounds)} ${short}`).join(' + ')} = ${weight(all.netPounds)} ${short}.`;
  return [
    `Neto: ${net}`,
    `Abejas: ${weight(all.netPounds)} × ${units === 'us' ? plain(ordered['bees-per-pound']) : converted(perWeight.boxes.metric.fromFixed(ordered['bees-per-pound']))}.`,
    ...(all.shakePounds === undefined
      ? []
      : [`Se pone: ${weight(all.netPounds)} × (1 + ${three(allowance!)} ÷ 100) = ${weight(all.shakePounds)} ${short}.`]),
    ...(all.grossPounds === undefined
      ? []
      : [
          `Bruto: ${weight(all.netPounds)} + ${whole(all.packages)} × (${weight(cage!)} + ${weight(can!)}) = ${weight(all.grossPounds)} ${short}.`,
        ]),
    ...(spare === 0 ? [] : [`Reinas: ${whole(all.packages)} + ${whole(spare)}.`]),
    ...(all.syrupLitres === undefined
      ? []
      : [`Jarabe: ${whole(all.packages)} × ${three(canVolume.boxes[units].fromFixed(syrup!))} ${volume}.`]),
  ].join(' ');
};

export const faultWords: typeof English.faultWords = (reason, ordered, units) => {
  const twenty = units === 'us' ? '20 lb' : '9 kg';
  switch (reason) {
    case 'no-lines':
    case 'no-count':
      return ['packages', 'Escriba cuántos paquetes, 1 o más.'];
    case 'count-not-whole':
      return ['packages', 'Escriba un número entero de paquetes.'];
    case 'no-weight':
      return ['pounds', 'El peso debe ser más de 0.'];
    case 'too-much':
      return ordered.lines.some(({ pounds }) => pounds > 20)
        ? ['pounds', `Un paquete pesa como máximo ${twenty}.`]
        : ['packages', `Un pedido tiene como máximo ${whole(10_000)} paquetes.`];
    case 'no-bees-per-pound':
      return [
        'bees-per-pound',
        units === 'us'
          ? `Las abejas en una libra son más de 0 y como máximo ${whole(10_000)}.`
          : `Las abejas en un kilogramo son más de 0 y como máximo ${whole(22_000)}.`,
      ];
    case 'impossible-spare-queens':
      return ['spare-queens', `Las reinas de reserva son de 0 a ${whole(10_000)}.`];
    case 'impossible-allowance':
      return ['allowance', 'Está entre 0 y 100 %.'];
    case 'impossible-cage':
      return ['cage-lb', `Una jaula vacía pesa de 0 a ${twenty}.`];
    case 'impossible-can':
      return ['can-lb', `Una lata pesa de 0 a ${twenty}.`];
    case 'impossible-syrup':
      return ['syrup-l-each', `En una lata caben de 0 a ${units === 'us' ? '21 cuartos de EE. UU.' : '20 L'}.`];
    case 'impossible-hours':
      return ['hours', `Las horas son de 0 a ${longestHours}.`];
  }
};

export const syrupInCans: typeof English.syrupInCans = (amount) => `Jarabe en las latas: ${amount}.`;
export const askForNumbers = 'Pida al proveedor los números que faltan. Pídalos por escrito.';
export const printSheet = 'Imprima la hoja para recoger los paquetes, y dé una a cada conductor.';
export const nextCheck = 'Próxima revisión: el día en que recoge los paquetes, antes de salir con las abejas.';

export const outputs: typeof English.outputs = {
  net: 'Neto, en las etiquetas',
  putIn: 'Lo que se pone',
  gross: 'Bruto, para cargar',
  bees: 'Abejas',
  queens: 'Reinas',
  syrup: 'Jarabe en las latas',
};
export const table: typeof English.table = {
  heading: 'Línea por línea',
  line: 'Línea',
  net: 'Neto',
  putIn: 'Se pone',
  gross: 'Bruto',
  bees: 'Abejas',
  queens: 'Reinas',
  syrup: { us: 'Jarabe, gal EE. UU.', metric: 'Jarabe, L' },
  packages: 'Paquetes',
};
export const sheet: typeof English.sheet = {
  blanks: 'Hoja para recoger los paquetes. Día, hora: ________________ Lugar: __________________ Conductor: __________________',
  columns: ['Nombre', 'Paquetes', 'Peso, lleno', 'La reina camina', 'Muertas, altura', 'Firma'],
  makes: '“Imprimir” hace la hoja para recoger los paquetes: estos números, una línea para cada persona y las listas de abajo.',
};

export const stepByStep = 'El ejemplo paso a paso, y una tabla';
export const exampleWords: typeof English.exampleWords = (three, two) =>
  `Diez paquetes de ${three} y cuatro de ${two}; los números del proveedor son inventados.`;
export const packagesOf: typeof English.packagesOf = (weight) => `Paquetes de ${weight}`;
export const others = 'Otros cuentan {some} o {more}. Bien alimentadas, son menos: {fed}.';
export const theWork = 'El trabajo mismo: {lists}.';

export const pickUp: typeof English.pickUp = {
  title: 'En el camino, y al llegar',
  onRoad: 'En el camino',
  road: [
    'Frescos: por debajo de {low} o por encima de {high} el esperma guardado de una reina puede morir.',
    'Con aire: nada sobre las mallas, el ancho de una mano entre paquetes, una ventana abierta.',
    'De pie y amarrados, con la lata arriba. Tiene cerca de {holes} agujeros pequeños.',
    'A la sombra. No los deje en un vehículo cerrado.',
    'Hasta pasarlos a la colmena: oscuridad, silencio y aire, a {hold}, durante {days} como máximo. Otros los tienen cerca de {others}: pregunte al proveedor.',
  ],
  onArrival: 'Mire cada paquete al llegar',
  arrival: [
    'Las abejas cuelgan en un racimo y están secas, no repartidas por el fondo.',
    'La reina camina en su jaula. Pida verla.',
    'La lata pesa y no gotea.',
    'Abejas muertas en el fondo: desde {depth} de altura, tómeles una foto con una regla.',
    'Anote el día en que se sacudieron.',
    'Pese algunos, llenos, y anote el peso junto al nombre.',
  ],
  call: (name) => `**¿Algo está mal? Dígalo antes de irse, y llame:** ${name}, {number}.`,
  write: (name) => `**¿Algo está mal? Dígalo antes de irse, y escriba a:** ${name}, {number}.`,
  tell: '**¿Algo está mal? Dígalo antes de irse, y avise al proveedor.**',
};
export const limits = [
  'Cuántas abejas hay en los suyos. En una libra caben más abejas con hambre que llenas.',
  'Cuántas mueren en el camino. No se vio ningún estudio, así que lo que se pone sobre la etiqueta lo debe decir el proveedor.',
  'Si las abejas están sanas. Los paquetes traían {mites} ácaros cuando se tomaron muestras.',
  'Qué papeles necesitan las abejas en su camino. Pregunte al inspector.',
];
