/*
 * Asks the browser to keep the almanac for use without signal, and shows the messages of the service worker. A page is
 * loaded again only when the reader presses the button.
 */
const base = import.meta.env.BASE_URL;
const place = document.querySelector<HTMLElement>('[data-offline]');
const workers = navigator.serviceWorker;
const address = new URL(`${base}worker.js`, location.href).href;

async function start(): Promise<void> {
  const registration = await workers.register(address, { updateViaCache: 'none' });
  (registration.waiting ?? registration.active)?.postMessage(document.documentElement.dataset.edition);
  // Browsers look for a new edition at their own times. A reader with signal gets it at once.
  if (!registration.installing) await registration.update();
}

export function keepOffline(): void {
  if (!place || !workers) return;
  workers.onmessage = ({ data, source }) => {
    if ((source as ServiceWorker).scriptURL !== address) return;
    if (data.again) return location.reload();
    place.hidden = false;
    place.textContent = `${data.says} `;
    if (data.first) document.querySelector('main')!.before(place);
    if (!data.press) return;
    const button = Object.assign(document.createElement('button'), { type: 'button', textContent: data.press });
    button.onclick = () => (source as ServiceWorker).postMessage('new edition');
    place.append(button);
  };
  // A browser that stores nothing still shows the page.
  addEventListener('load', () => void start().catch(() => undefined));
}
