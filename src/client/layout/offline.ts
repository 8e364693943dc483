/*
 * Asks the browser to keep the almanac for use without signal, and shows what its worker tells. On a metered connection
 * only what is read is kept, until the reader asks for all. Nothing is loaded again unless she presses the button.
 */
const base = import.meta.env.BASE_URL;
const place = document.querySelector<HTMLElement>('[data-offline]');
const workers = navigator.serviceWorker;
const address = new URL(`${base}worker.js`, location.href).href;

const keep = (tail: string): Promise<ServiceWorkerRegistration> => workers.register(address + tail, { updateViaCache: 'none' });

async function start(): Promise<void> {
  const { saveData, type } = (navigator as { connection?: { saveData?: boolean; type?: string } }).connection ?? {};
  const held = await workers.getRegistration(base);
  const light = (saveData || type === 'cellular') && held?.active?.scriptURL !== address;
  const registration = await keep(light ? '?read' : '');
  (registration.waiting ?? registration.active)?.postMessage(document.documentElement.dataset.edition);
  // Browsers look for a new edition at their own times. A reader with signal gets it at once.
  if (!registration.installing) await registration.update();
}

export function keepOffline(): void {
  if (!place || !workers) return;
  workers.onmessage = ({ data, source }) => {
    if ((source as ServiceWorker).scriptURL.split('?')[0] !== address) return;
    if (data.again) return location.reload();
    place.hidden = false;
    place.textContent = `${data.says} `;
    if (data.first) document.querySelector('main')!.before(place);
    if (!data.press) return;
    const button = Object.assign(document.createElement('button'), { type: 'button', textContent: data.press });
    button.onclick = () => {
      if (data.asks === 'all') void keep('');
      else (source as ServiceWorker).postMessage(data.asks);
    };
    place.append(button);
  };
  // A browser that stores nothing still shows the page.
  window.addEventListener('load', () => void start().catch(() => undefined));
}
