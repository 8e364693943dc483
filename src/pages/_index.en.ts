/** The first page: what is due now. */
export const lookingFor = 'What are you looking for?';
export const search = 'Search';
/** Where no script runs. `year` is the page of the year. */
export const withoutScript = 'Without its script this page cannot know the day. [The whole year](year) lists everything in order.';
export const nextMeeting = 'Next meeting';
export const addToCalendar = 'Add to calendar';
export const inBloom = 'In bloom';
export const whatBlooms = 'What blooms when';
export const notABeekeeper = 'Not a beekeeper?';
/** By the article that each leads to: its title here, and a line below it. */
export const passersBy = {
  'swarm-on-a-tree': ['A swarm in your garden', 'Keep back, and call the club.'],
  stings: ['Someone was stung', 'What to do, in order.'],
  'bees-in-a-wall': ['Bees in a wall or a chimney', 'Do not block the hole. Do not light a fire.'],
} as const;
