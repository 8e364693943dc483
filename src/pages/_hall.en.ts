export const title = 'Hall screen';
/** What can be shown, by its page. */
export const shown = {
  'lists/': 'A checklist, step by step',
  'pests/': 'A problem and its look-alikes',
  'work-it-out/mite-count/': 'A mite count, typed here',
  'work-it-out/count-day/': 'The counts of the evening',
};
export const largeScreen = 'On a projector or a large screen, this page fills the wall.';
export const noScript = 'Without its script this page cannot know the day, and a page cannot be shown part by part.';
export const show = 'Show';
export const nextMeeting = 'Next meeting';
export const onYourPhone = 'On your phone';
