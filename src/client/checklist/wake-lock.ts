/* Keeps the screen on during work with gloves, for as long as the reader wants. */
import { letSleep, stayAwake } from '../awake/stay-awake.ts';

export async function keepScreenOn(button: HTMLButtonElement, tell: (words: string) => void): Promise<void> {
  const isWanted = button.getAttribute('aria-pressed') !== 'true';
  if (!isWanted) await letSleep();
  const isOn = isWanted && (await stayAwake());
  button.setAttribute('aria-pressed', String(isOn));
  tell(
    isOn
      ? 'The screen stays on while this page is open. That uses the battery.'
      : isWanted
        ? 'This browser does not let a page keep the screen on.'
        : 'The screen goes off as it always does.',
  );
}
