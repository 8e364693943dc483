/* Any search form: on first use the engine's files are fetched, so that the list is there when the form is sent. */
import { openEngine } from './engine.ts';

export function wake(_form: HTMLFormElement): void {
  openEngine().catch(() => undefined);
}
