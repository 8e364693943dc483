/* A local day and hour for the calendar writer, independent of this machine's time zone and its clock changes. */
export class WallClock extends Date {
  // By these three properties the calendar writer recognises a date with its own time zone and leaves it unchanged.
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
