/*
 * Offers to put the almanac on the home screen, on the page of display settings. A browser that can install by itself gives a button, all
 * others have words. It is not said in an installed almanac, nor again after the reader closed it.
 */
const section = document.querySelector<HTMLElement>('[data-install]')!;
const closedKey = `almanac ${document.documentElement.dataset.shelf} home screen`;

/** Chromium's event, which waits for a press (it is not in the type library). */
type InstallEvent = Event & { prompt(): Promise<unknown> };

function wasClosed(): boolean {
  try {
    return localStorage.getItem(closedKey) !== null;
  } catch {
    return false;
  }
}

function close(): void {
  section.hidden = true;
  try {
    localStorage.setItem(closedKey, 'closed');
  } catch {
    // A browser that stores nothing says it again on the next visit to this page.
  }
}

// Safari has a property of its own for an almanac that was opened from the home screen.
const isInstalled = matchMedia('(display-mode: standalone)').matches || ('standalone' in navigator && navigator.standalone === true);
section.hidden = isInstalled || wasClosed();
section.querySelector('[data-install-close]')!.addEventListener('click', close);

addEventListener('beforeinstallprompt', (event) => {
  // The browser's own strip does not come up.
  event.preventDefault();
  const button = section.querySelector<HTMLButtonElement>('[data-install-now]')!;
  button.hidden = false;
  section.querySelector<HTMLElement>('[data-install-words]')!.hidden = true;
  button.onclick = () => void (event as InstallEvent).prompt();
});
addEventListener('appinstalled', close);
