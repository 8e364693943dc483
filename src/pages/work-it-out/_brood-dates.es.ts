export const limits = [
  'La cría algo fría tarda un día más, o varios. La cría que se enfría demasiado muere.',
  'La lluvia y el viento no dejan salir a una reina joven. Entonces se aparea y pone huevos más tarde, o nunca.',
  'Una colmena puede tener celdas de varias edades. Las fechas son de las que usted vio.',
  'Deje cerrada una colmena con una reina joven hasta la fecha en que debe poner huevos: si la abre, puede perderla.',
  'Después de que paró la puesta, una segunda reina todavía puede poner huevos. Busque huevos antes de confiar en una fecha.',
];
export const more = 'Más: {pages}.';
