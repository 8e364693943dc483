/*
 * Screen wake lock. A browser releases the lock when the page is hidden, so it is requested again when the page is visible. W3C Screen
 * Wake Lock.
 */
let held: WakeLockSentinel | null = null;
let isWanted = false;

/** Keeps the screen on until `letSleep`. False where this browser does not let a page do that. */
export async function stayAwake(): Promise<boolean> {
  isWanted = await ask();
  return isWanted;
}

export async function letSleep(): Promise<void> {
  isWanted = false;
  await held?.release();
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
