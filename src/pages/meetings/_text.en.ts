export const title = 'Meetings';
export const lead = (timeZone: string): string => `Days and hours by the clock of the hall (${timeZone}).`;
export const calendarFile = 'Calendar file of all meetings';
export const blankSheets = 'Blank sheets to print for a meeting';
export const past = 'Past meetings';
/** The page of one meeting. */
export const calledOff = 'Called off';
export const calledOffBecause = (why: string): string => `**Called off.** ${why}`;
export const saidOn = (day: string): string => `Said on ${day}.`;
/** `{time}` is drawn by the page. */
export const byTheClock = '{time}, by the clock of the hall.';
export const calledOffBy = (who: string): string => `Called off by ${who}. An offline copy cannot know.`;
export const addToCalendar = 'Add to calendar';
export const learned = 'What we learned';
export const bring = 'Bring';
export const printAndBring = 'Print and bring';
export const readBefore = 'Read before';
export const handOut = 'Hand-out of this meeting';
