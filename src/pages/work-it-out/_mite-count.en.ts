export const limits = [
  'It speaks for the colonies that were counted. Look at {colonies} colonies or more.',
  'Mites under cappings are not in the sample.',
  'A cup is a rough measure. Samples meant to be 300 bees held {counted} when counted.',
  'No way of counting finds every mite. A sugar roll found {roll} of them, a spun wash over {wash}.',
  'A sticky board measures something else: never compare it with these levels.',
  'In fall mites also arrive from outside: {arriving} to one colony.',
  'It names no treatment. The label on your container decides that.',
];
