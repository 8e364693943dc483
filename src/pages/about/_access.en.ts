export const title = 'Display settings';
export const lead = 'How the pages look, which district their dates are for, and how they were tested for every reader.';
export const howItLooks = 'How a page looks';
export const remembered = 'This device remembers what you choose.';
export const withoutScript = 'To choose here, let this site run its script.';
export const groupOfForms = 'How the page looks';
/** Buttons, each with what it does. */
export const forms = {
  sun: ['Bright sun', '**Bright sun** shows black on white, in larger letters.'],
  night: ['Night', '**Night** shows light letters on a dark page. A device that is set to dark gets it by itself.'],
  large: ['Large print', '**Large print** makes all letters larger.'],
  gloves: ['Gloves', '**Gloves** makes everything you press twice as high.'],
} as const;
export const yourDistrict = 'Dates for your district';
export const groupOfDistricts = 'District that dates are for';
export const datesFor = (district: string): string => `Dates for ${district}`;
export const homeScreen = 'On your home screen';
export const likeAProgram = 'From the home screen the almanac opens like a program of its own, also without signal.';
export const howToInstall =
  'In Safari, press Share, and then “Add to Home Screen”. In Firefox on a phone, open the menu, and press the line about the home screen.';
export const addToHomeScreen = 'Add to home screen';
export const notAgain = 'Don’t show this again';
export const whatTheyDo = 'What the choices do';
export const yourColors = 'Colors that you force in your system are followed. Nothing moves by itself.';
export const withoutMouse = 'Without a mouse, by ear, enlarged';
export const withoutMousePoints = [
  'The Tab key reaches everything, in order. A thick frame shows where you are.',
  'The first press of Tab offers a way past the head of the page, to its text.',
  'Headings, lists, tables and boxes are marked as what they are. Drawings have words. Results are read out when they come.',
  'Enlarge a page four times: its lines fold, and nothing is lost. Only wide tables move sideways, in a frame of their own.',
  'No color says anything alone. A status is a word and a shape as well.',
  'Nothing is dragged, nothing runs out of time, and each tick can be undone.',
];
export const withoutNetwork = 'Without script, without signal, on paper';
export const withoutNetworkPoints = [
  'Without script every page can be read, with a worked example in place of each form.',
  'After one visit the almanac is available offline on your device.',
  'Every page prints in black on white. [The book](book) holds all of them, for an e-reader too.',
];
export const heldAgainst = 'What it was held against';
export const guidelines =
  'The [Web Content Accessibility Guidelines 2.2](wcag) of the World Wide Web Consortium, on the pages of a demonstration club. Levels A and AA are what laws usually ask for.';
export const columns = { level: 'Level', met: 'Met', notInUse: 'Not in use', notMet: 'Not met' };
export const notMet = 'Not in use: there is no film, no sound, nothing to buy or sign, and nobody signs in. Not met, all of level AAA:';
/** By the number of the criterion. */
export const criteria = {
  '1.3.6': 'What buttons and pictures are for is said in words only, not in a code for programs.',
  '1.4.8': 'Paragraphs stand closer together than the guidelines ask.',
  '2.2.4': 'The line that tells of the copy on your device comes without being asked for.',
  '2.4.9': 'A few links, such as “See all sources for this figure”, say where they lead only together with their row.',
  '3.1.3': 'Not every unusual word is surely in [the list of words](words).',
  '3.1.4': 'Units and short names of offices are not spelled out each time.',
  '3.1.5': 'Sentences are short, but the reading age was not measured.',
  '3.1.6': 'No word says how it is pronounced.',
  '3.3.5': 'Not every box has a hint of its own.',
};
export const whoLooked =
  'Programs look at these points whenever the almanac’s own program is changed. People looked at the rest on 25 November 2026. Nobody who lives with a screen reader has tried it yet.';
export const inYourWay = 'Something is in your way?';
export const writeTo = (address: string): string =>
  `Write to [${address}](mail). Say which page, what you use to read it, and what you could not do.`;
