/* A day and hour as they stand on the hall's clock, whatever zone this machine is in and whatever hour its own clock skips. */
export class WallClock extends Date {
  // By these three the calendar writer knows a date that minds its own zone, and leaves it as it is.
  readonly internal = new Date(this);
  withTimeZone(): this {
    return this;
  }
  tzComponents(): [] {
    return [];
  }
  constructor(day: string, clock: string) {
    super(`${day}T${clock}:00Z`);
  }
  override getFullYear(): number {
    return this.getUTCFullYear();
  }
  override getMonth(): number {
    return this.getUTCMonth();
  }
  override getDate(): number {
    return this.getUTCDate();
  }
  override getHours(): number {
    return this.getUTCHours();
  }
  override getMinutes(): number {
    return this.getUTCMinutes();
  }
  override getSeconds(): number {
    return this.getUTCSeconds();
  }
}
