export const title = 'Pocket card';
export const lead = 'One sheet, both sides, folded twice to eight small pages. Print it at full size, flipped on the long edge.';
export const fold = 'Fold the top half down behind, then the left half behind. Cut the fold at the top open.';
export const print = 'Print the card';

/** `{edition}` shows its day and mark. */
export const club = (name: string): string => `${name}. Edition of {edition}.`;
/** `{number}` is the number, to press. */
export const call = 'Call {number}';
export const yard = 'The address of my yard:';
export const gate = 'The gate, and where to turn in:';
export const epinephrine = 'Who carries epinephrine:';
export const moreOnStings = 'More on stings';
export const whoToCall = 'Who to call';
export const work = "The year's work";

export const wash = (bees: number): string => `Mites in a wash of ${bees} bees`;
export const mites = 'Mites';
export const per100 = 'Per 100';
export const range = 'Likely range';
export const level = (per100: number): string => `Level ${per100}`;
export const allYear = 'all year';
export const noLevel = 'The club has no level yet.';
export const labelDecides = 'The label decides what you may use, and when.';

export const syrup = (temperature: string): string => `Syrup at ${temperature}, sugar first`;
export const mixes = 'Usual mixes';
export const mix = 'Mix';
export const sugar = 'Sugar';
export const inGallon = 'In a US gallon';
export const inLitre = 'In a litre';
export const grainsBelow = 'Grains below';
export const noGrain = 'does not grain';
export const feeding =
  'White sugar and plain water only. Feed inside the hive, in the evening. Give no syrup while boxes for harvest are on.';

export const brood = 'Brood that looks wrong';
export const close = 'Close the hive, leave the tools there, and call before anything moves.';
export const report = ' – report it';

export const counts = 'My counts';
export const day = 'Day';
export const hive = 'Hive';
export const bees = 'Bees';
export const whoDecides = 'The label, the inspector, the extension service and your doctor decide, not this card.';
/** `figures` is the address of that page, where the site has one. */
export const numbers = (almanac: string, edition: string, figures = 'the page Figures'): string =>
  `${almanac}, edition of ${edition}. Where each number comes from: ${figures}.`;
