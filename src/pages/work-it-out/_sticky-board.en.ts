export const limits = [
  'It does not tell the mites in the colony, nor mites per hundred bees.',
  'A small colony drops few mites, even when many of its bees carry one.',
  'More fall when much brood emerges, and in the days of a treatment.',
  'Ants and wind carry mites off. Grease the board, and screen it from the bees.',
  'One night tells little. Several days even out.',
];
