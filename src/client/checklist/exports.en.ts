export const giveDay = 'Give the checklist its day first. The dates of the steps count from it.';
export const noDates = 'No step that is left has a date from today on.';
/** `late` steps are left out. */
export const savedCalendar = (name: string, events: number, late: number): string =>
  [
    `Saved as ${name}. Open the file to add ${events === 1 ? '1 event' : `${events} events`} to your calendar.`,
    late > 0 ? `${late === 1 ? '1 step is' : `${late} steps are`} overdue and left out.` : '',
  ].join(' ');
export const savedAs = (name: string): string => `Saved as ${name}.`;
