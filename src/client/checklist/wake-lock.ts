/* Keeps the screen on during work with gloves, for as long as the reader wants. */
import { letSleep, stayAwake } from '../awake/stay-awake.ts';
import * as text from './wake-lock.en.ts';

export async function keepScreenOn(button: HTMLButtonElement, tell: (words: string) => void): Promise<void> {
  const isWanted = button.getAttribute('aria-pressed') !== 'true';
  if (!isWanted) await letSleep();
  const isOn = isWanted && (await stayAwake());
  button.setAttribute('aria-pressed', String(isOn));
  tell(isOn ? text.staysOn : isWanted ? text.cannot : text.goesOff);
}
