export const limits = [
  'It is for meeting one mite. How many there are, the mite count tells.',
  'No mite met is not no mites: the chance to miss them stands beside it.',
  'Mites clump. One colony does not speak for the next.',
  'Mites under cappings are not in the sample.',
  'A cup is a rough measure. Samples meant to be 300 bees held {counted} when counted.',
  'It is not for foulbrood or another disease that must be reported. Ask the inspector.',
];
