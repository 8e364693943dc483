/*
 * Asks the browser to keep the almanac for use without signal, and shows the messages of the service worker. A page is
 * loaded again only when the reader presses the button.
 */
const base = import.meta.env.BASE_URL;
const place = document.querySelector<HTMLElement>('[data-offline]');
const workers = navigator.serviceWorker;
const address = `${location.origin}${base}worker`;
const { edition } = document.documentElement.dataset;

/** Milliseconds after which a complete edition takes over. Measured: see decision 0059. */
const QUIET = 500;

async function start(): Promise<void> {
  const registration = await workers.register(`${address}.js`, { updateViaCache: 'none' });
  registration.active?.postMessage({ edition });
  letTakeOver(registration);
  // An update may be on its way since the page before.
  const whenComplete = () => registration.installing?.addEventListener('statechange', () => letTakeOver(registration), { once: true });
  registration.onupdatefound = whenComplete;
  whenComplete();
  // Browsers look for a new edition at their own times. A reader with signal gets it at once.
  if (!registration.installing) await registration.update();
}

/**
 * Tells an edition that is complete to take over, in a quiet moment, and again until it has. Chromium can lose a page that is asked for
 * while one worker follows another, or leave the new one waiting.
 */
function letTakeOver(registration: ServiceWorkerRegistration): void {
  if (!registration.waiting) return;
  setTimeout(() => {
    registration.waiting?.postMessage('new edition');
    letTakeOver(registration);
  }, QUIET);
}

export function keepOffline(): void {
  if (!place || !workers) return;
  workers.onmessage = ({ data, source }) => {
    if ((source as ServiceWorker).scriptURL !== `${address}.js`) return;
    place.hidden = false;
    place.textContent = `${data.says} `;
    // Nothing moves under the eyes of a reader: an edition that took over is said at the foot of the page that is in view.
    if (data.first && (!data.press || document.hidden)) document.querySelector('main')!.before(place);
    if (data.press)
      place.append(Object.assign(document.createElement('button'), { textContent: data.press, onclick: () => location.reload() }));
  };
  workers.oncontrollerchange = () => {
    workers.controller?.postMessage({ edition, tookOver: true });
    // The host must allow it: see worker-slash.ts.
    if (base !== '/') workers.register(`${address}-slash.js`, { scope: base.slice(0, -1) }).catch(() => undefined);
  };
  // A browser that stores nothing still shows the page.
  addEventListener('load', () => void start().catch(() => undefined));
}
