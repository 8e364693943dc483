export const isFiled = 'This checklist is in your history. You can read it, but not change it.';
export const isPaused = 'The list waits for your answer.';
export const gone = (ticks: number): string => `Ticks for steps that are no longer in this list: ${ticks}.`;
export const trouble = {
  blocked: 'This browser does not save this page. Your ticks last until you leave it.',
  full: 'This browser has no room left. Your ticks last until you leave this page. Save them to a file.',
  damaged: 'The saved ticks cannot be read. They are left as they are. New ticks last until you leave this page.',
  newer: 'The saved ticks come from a newer edition. They are left as they are. New ticks last until you leave this page.',
};
