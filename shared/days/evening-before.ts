/** Time from 18:00 on the day before until an event begins, in seconds, for its reminder. A day with a clock change counts as any other. */
const SIX_HOURS = 6 * 60 * 60;

/** `start` is the hour of the event, `18:30`. An event of whole days begins at midnight. */
export function sinceEveningBefore(start = '00:00'): number {
  const [hours, minutes] = start.split(':').map(Number) as [number, number];
  return SIX_HOURS + hours * 3600 + minutes * 60;
}
