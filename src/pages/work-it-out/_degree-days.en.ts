export const limits = [
  'A degree-day of °C is 1.8 of °F: 10 °C warmer is 18 °F warmer.',
  'It knows no rain, frost or soil. A late frost takes a bloom that the sum promised.',
  'Bees need a warm, dry hour at the bloom. A sum does not give that.',
  'Days left out count as nothing, so the sum comes out too small.',
  'Your own notes of first bloom, year by year, beat any list from elsewhere.',
];
