import type * as English from './text.en.ts';

export const pictureOfResult = 'Dibujo del resultado';

export const colonies: typeof English.colonies = (half, count) => `${half}: ${count} ${count === 1 ? 'colonia' : 'colonias'}`;
export const countsChart: typeof English.countsChart = (title) =>
  `${title}: ácaros por cada 100 abejas en cada quincena, cada colonia un punto, la mitad central una barra, el nivel una línea cortada. La tabla dice lo mismo.`;

export const warmthAndBloom: typeof English.warmthAndBloom = (district) => `Calor y floración: ${district}`;
export const curve: typeof English.curve = (scale, total) =>
  `Mínimas y máximas diarias normales durante el año en ${scale}, ${total ? `la suma de grados-día hasta ${total} ` : ''}y un punto para cada planta en su día. Los números están en la tabla de abajo.`;
export const band: typeof English.band = (scale) => `La franja queda entre la mínima y la máxima diarias normales, en ${scale}.`;
export const dots = ' Cada punto es una planta del [calendario de floración](bloom) en su día.';
export const sum: typeof English.sum = (base, day, total) =>
  `La línea cortada es la suma de grados-día sobre ${base} desde el ${day}, con la media del día: ${total} en un año normal. Incluye los calores y los fríos de un año cualquiera, pero no los del año de usted.`;
export const normals = 'Los valores normales por mes';
export const month = 'Mes';
export const low: typeof English.low = (scale) => `Mínima diaria, ${scale}`;
export const high: typeof English.high = (scale) => `Máxima diaria, ${scale}`;

export const ring = 'El año como un anillo: las fases del año de una colmena alrededor de los doce meses.';
export const beginsIn: typeof English.beginsIn = (short, month) => `${short}: lo que empieza en ${month}`;
export const theYear = 'El año';
export const inDistrict: typeof English.inDistrict = (district) => `en ${district}`;
