export const limits = [
  'No dice los ácaros de la colonia, ni los ácaros por cada 100 abejas.',
  'De una colonia pequeña caen pocos ácaros, aunque muchas de sus abejas lleven uno.',
  'Caen más cuando nace mucha cría, y en los días de un tratamiento.',
  'Las hormigas y el viento se llevan ácaros. Engrase la lámina, y sepárela de las abejas con una malla.',
  'Una noche dice poco. Varios días se compensan.',
];
