import { formatExact } from '../../../shared/numbers/show-number.ts';

export const limits = [
  `Un grado-día de °C son ${formatExact(1.8)} de °F: 10 °C más de calor son 18 °F más.`,
  'No sabe de lluvia, heladas ni suelo. Una helada tardía se lleva una floración que la suma prometía.',
  'Las abejas necesitan una hora cálida y seca en la floración. Una suma no da eso.',
  'Los días que faltan cuentan como nada; por eso la suma sale demasiado pequeña.',
  'Sus propias notas de la primera flor, año tras año, valen más que cualquier lista de otro lugar.',
];
