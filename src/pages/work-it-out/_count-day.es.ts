export const saveFile = 'Guardar para los conteos de la asociación (CSV)';

export const background = [
  'Cada colonia: los ácaros, divididos entre las abejas y multiplicados por 100.',
  'La mitad del medio está entre el primer y el tercer cuarto de las colonias. Los valores entre dos colonias se interpolan.',
  'En conjunto: todos los ácaros entre todas las abejas. El rango probable tiene en cuenta que los ácaros se juntan en algunas colonias.',
];
export const clubLevels = 'Los niveles de la asociación: {levels}.';

export const limits = [
  'Nada sale por sí solo de este dispositivo. Copie el enlace, muestre su código o entregue el archivo.',
  'Para llevar a la pared los conteos de un teléfono, abra su enlace en la computadora del proyector, o escríbalos allí.',
  'El archivo no tiene nombres ni lugares, solo el día, la zona y los números.',
  'El valor del medio de un día de conteo oculta la peor colonia. Arriba se nombra cada colonia por encima del nivel.',
  'Quienes cuentan no son todos los socios.',
];
