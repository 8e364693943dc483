export const labelDecides =
  '**The label on your container decides.** These rows are background: they can rule out, never rule in. Only a product registered for honey-bee colonies where you are counts.';
export const unopened = (count: number, all: number): string =>
  `**We could not open ${count} of the ${all} labels.** For those this page says only: ask. Read the label on your container.`;

export const limits = [
  'It gives no amount, no brand and no advice to treat. Count mites first.',
  'It does not know what was given before. Mites outlive what they have met too often.',
  'A forecast past a week is a guess: look again each morning.',
  'Gloves, eye cover and the mask are those that your label names.',
  'Nothing mixed at home, no wood bleach, no product of another animal.',
  'Of antibiotics it says nothing: foulbrood is the inspector’s matter.',
  'Labels change. Read the one on the container in your hand.',
];
