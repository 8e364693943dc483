import type * as English from './_treatment-window.en.ts';

export const labelDecides =
  '**La etiqueta de su envase decide.** Estas filas son información de fondo: pueden descartar, nunca permitir. Solo cuenta un producto registrado para colonias de abejas melíferas donde usted está.';
export const unopened: typeof English.unopened = (count, all) =>
  `**No pudimos abrir ${count} de las ${all} etiquetas.** De esas, esta página dice solo: pregunte. Lea la etiqueta de su envase.`;

export const limits = [
  'No da cantidades ni marcas, y no aconseja tratar. Primero cuente los ácaros.',
  'No sabe qué se puso antes. Los ácaros sobreviven a lo que han encontrado demasiadas veces.',
  'Un pronóstico de más de una semana es una suposición: mire otra vez cada mañana.',
  'Los guantes, las gafas protectoras y la mascarilla son los que nombra su etiqueta.',
  'Nada de mezclas caseras, nada de blanqueador de madera, ningún producto para otro animal.',
  'De antibióticos no dice nada: la loque es asunto del inspector apícola.',
  'Las etiquetas cambian. Lea la del envase que tiene en la mano.',
];
