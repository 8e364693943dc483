/*
 * Screen wake lock: keeps the screen on during work with gloves, for as long as the reader wants. W3C Screen Wake Lock. A browser
 * releases the lock when the page is hidden, so it is requested again when the page is visible.
 */
let held: WakeLockSentinel | null = null;
let isWanted = false;

export async function keepScreenOn(button: HTMLButtonElement, tell: (words: string) => void): Promise<void> {
  isWanted = button.getAttribute('aria-pressed') !== 'true';
  if (!isWanted) await held?.release();
  const isOn = isWanted && (await ask());
  button.setAttribute('aria-pressed', String(isOn));
  tell(
    isOn
      ? 'The screen stays on while this page is open. That uses the battery.'
      : isWanted
        ? 'This browser does not let a page keep the screen on.'
        : 'The screen goes off as it always does.',
  );
  isWanted = isOn;
}

async function ask(): Promise<boolean> {
  try {
    held = await navigator.wakeLock.request('screen');
    return true;
  } catch {
    return false;
  }
}

document.addEventListener('visibilitychange', () => void (isWanted && document.visibilityState === 'visible' && ask()));
