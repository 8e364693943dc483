/*
 * A service worker's surroundings in memory: the host with its files, the caches, the open pages and the registration. Each call of
 * `start` loads the real worker afresh, as a browser does after it has stopped one; caches outlive it, as they do on a device.
 */
import { createHash } from 'node:crypto';
import { vi } from 'vitest';
import type { OfflineCopy } from '../../../src/service-worker/cache.ts';
import type { WorkerMessage } from '../../../src/service-worker/messages.ts';

export const ORIGIN = 'https://club.example';
const base = '/club/';
const scope = ORIGIN + base;

export const digestOf = (body: string): string => createHash('sha256').update(body).digest('base64');

/** What the build lists of an edition. `files` are paths below the base with their text. */
export const editionOf = (files: Record<string, string>, other: Partial<OfflineCopy> = {}): OfflineCopy =>
  ({
    base,
    day: '2026-04-18',
    edition: '2026-04-18 f1f1f1',
    name: '18 April 2026 (f1f1f1)',
    zone: 'America/New_York',
    size: '1.4 MB',
    print: 'first',
    pages: Object.keys(files).filter((path) => path.endsWith('/') || path === '').length,
    files: Object.entries(files).map(([path, body]) => [path, digestOf(body)] as const),
    pictures: [],
    ownFiles: [],
    ...other,
  }) as OfflineCopy;

const whole = (address: string | URL | Request): string => (address instanceof Request ? address.url : new URL(address, scope).href);

class MemoryCache {
  readonly kept = new Map<string, Response>();
  readonly device: Device;
  constructor(device: Device) {
    this.device = device;
  }
  match = async (asked: string | Request): Promise<Response | undefined> => (
    await this.device.works(),
    this.kept.get(whole(asked))?.clone()
  );
  put = async (asked: string | Request, answer: Response): Promise<void> => {
    await this.device.works();
    if (!this.kept.has(whole(asked)) && this.device.isFull()) throw new DOMException('no room', 'QuotaExceededError');
    this.kept.set(whole(asked), answer);
  };
  delete = async (asked: string | Request): Promise<boolean> => (await this.device.works(), this.kept.delete(whole(asked)));
  keys = async (): Promise<Request[]> => (await this.device.works(), [...this.kept.keys()].map((url) => new Request(url)));
  add = async (asked: string): Promise<void> => {
    const answer = await fetch(whole(asked));
    if (!answer.ok) throw new TypeError(`${asked}: ${answer.status}`);
    await this.put(asked, answer);
  };
}

/** Where the files of an edition lie, and whether anything comes from there. */
export class Host {
  files: Record<string, string>;
  /** `none`: no signal. `silent`: nothing comes back. `error`: the host answers 500. */
  state: 'well' | 'none' | 'silent' | 'error' = 'well';
  asked: string[] = [];
  /** So many requests are answered, then none. */
  stopsAfter = Infinity;
  /** Milliseconds before each answer. */
  delay = 0;
  /** The page for an address that the host does not have. */
  missing = 'the host has no such page';
  constructor(files: Record<string, string>) {
    this.files = files;
  }
  fetch = async (input: string | Request, init?: RequestInit): Promise<Response> => {
    const request = input instanceof Request ? input : new Request(whole(input), init);
    const path = new URL(request.url).pathname.slice(base.length);
    this.asked.push(path);
    if (this.delay > 0) await new Promise((resolve) => setTimeout(resolve, this.delay));
    if ((this.stopsAfter -= 1) < 0) throw new TypeError('Failed to fetch');
    if (this.state === 'silent') return new Promise(() => undefined);
    if (this.state === 'none') throw new TypeError('Failed to fetch');
    if (this.state === 'error') return new Response('broken', { status: 500 });
    const body = this.files[path];
    if (body === undefined) return new Response(this.missing, { status: 404 });
    // A browser refuses a file that is not the listed one.
    if (request.integrity && request.integrity !== `sha256-${digestOf(body)}`) throw new TypeError('Failed integrity check');
    return new Response(body, { headers: { 'content-type': 'text/html' } });
  };
}

export class Page {
  readonly told: WorkerMessage[] = [];
  readonly id: string;
  readonly url: string;
  constructor(path = '', id = 'page') {
    this.url = scope + path;
    this.id = id;
  }
  postMessage = (message: WorkerMessage): void => void this.told.push(message);
  /** The last text that the page was told. */
  get says(): string | undefined {
    return this.told.at(-1)?.says;
  }
}

/** What outlives a worker: caches and open pages. */
export class Device {
  readonly caches = new Map<string, MemoryCache>();
  pages: Page[] = [];
  /** So many operations of caches are done. After them the browser is dead, until `revive`. */
  left = Infinity;
  done = 0;
  /** So many files fit in all caches together. */
  room = Infinity;
  #died!: () => void;
  /** Comes true when the browser dies. */
  died = new Promise<void>((resolve) => (this.#died = resolve));

  async works(): Promise<void> {
    if (this.done >= this.left) {
      this.#died();
      await new Promise(() => undefined);
    }
    this.done += 1;
  }
  revive(): void {
    [this.left, this.done] = [Infinity, 0];
  }
  isFull = (): boolean => [...this.caches.values()].reduce((sum, { kept }) => sum + kept.size, 0) >= this.room;
  /** Names of caches without the scope, and the paths that each holds. */
  holds(part: string): string[] {
    const cache = this.caches.get(`almanac ${scope} ${part}`);
    return [...(cache?.kept.keys() ?? [])].map((url) => new URL(url).pathname.slice(base.length)).sort();
  }
}

export class Worker {
  readonly listeners = new Map<string, (event: unknown) => void>();
  skipped = 0;
  claimed = false;

  /** `answered` ends the wait for the rest, as a page does that has its answer. */
  async send(type: string, event: object = {}, answered?: () => boolean): Promise<void> {
    const waits: Promise<unknown>[] = [];
    const waitUntil = (done: Promise<unknown>): void => {
      waits.push(done);
      // It is awaited below, in its turn.
      done.catch(() => undefined);
    };
    const fired = Object.assign(new Event(type), { waitUntil });
    for (const [name, value] of Object.entries(event)) Object.defineProperty(fired, name, { value });
    this.listeners.get(type)!(fired);
    if (answered?.()) return void (this.rest = waits);
    for (let at = 0; at < waits.length; at += 1) await waits[at];
  }

  install = (): Promise<void> => this.send('install');
  activate = (): Promise<void> => this.send('activate');
  ask = (source: Page, data: unknown): Promise<void> => this.send('message', { source, data });
  /** What the last request keeps the worker busy with, after its answer. */
  rest: Promise<unknown>[] = [];

  /** What the worker answers to a request; undefined where it leaves the request to the browser. */
  async answer(path: string, { navigate = false, resultingClientId = 'page', method = 'GET' } = {}): Promise<Response | undefined> {
    const request = new Request(new URL(path, scope), { method });
    if (navigate) Object.defineProperty(request, 'mode', { value: 'navigate' });
    let answer: Promise<Response> | undefined;
    await this.send(
      'fetch',
      { request, resultingClientId, respondWith: (given: Promise<Response>) => (answer = given) },
      () => answer !== undefined,
    );
    return answer;
  }

  /** The page that a reader gets who goes to an address: its text, or where it leads. */
  async open(path: string, resultingClientId?: string): Promise<string> {
    const answer = (await this.answer(path, { navigate: true, ...(resultingClientId ? { resultingClientId } : {}) }))!;
    return answer.headers.get('location') ?? `${answer.status === 200 ? '' : `${answer.status} `}${await answer.text()}`;
  }
}

/** Loads the worker of an edition. `replaces` says that another edition serves already, and this one waits. */
export async function start(edition: OfflineCopy, host: Host, device = new Device(), { replaces = false } = {}): Promise<Worker> {
  const worker = new Worker();
  const registration = {
    scope,
    active: replaces ? { scriptURL: `${scope}worker.js` } : null,
    waiting: replaces ? { scriptURL: `${scope}worker.js` } : null,
  };
  const location = new URL(`${scope}worker.js`);
  const scopeGlobals = {
    offlineCopy: edition,
    location,
    registration,
    serviceWorker: { state: 'installed' },
    fetch: host.fetch,
    caches: {
      open: async (name: string) => (
        await device.works(),
        device.caches.get(name) ?? device.caches.set(name, new MemoryCache(device)).get(name)!
      ),
      delete: async (name: string) => (await device.works(), device.caches.delete(name)),
      keys: async () => [...device.caches.keys()],
      match: async (asked: Request, { cacheName = '' }) => device.caches.get(cacheName)?.match(asked),
    },
    clients: {
      matchAll: async () => device.pages,
      claim: async () => void (worker.claimed = true),
    },
    skipWaiting: async () => void (worker.skipped += 1),
    addEventListener: (type: string, listener: (event: unknown) => void) => void worker.listeners.set(type, listener),
    FetchEvent: class extends Event {},
    Request: class extends Request {
      constructor(input: string | URL | Request, init?: RequestInit) {
        super(input instanceof Request ? input : whole(input), init);
      }
    },
  };
  for (const [name, value] of Object.entries(scopeGlobals)) vi.stubGlobal(name, value);
  vi.stubGlobal('self', globalThis);
  vi.stubEnv('NODE_ENV', 'production');
  vi.spyOn(Response, 'redirect').mockImplementation((to) => new Response(null, { status: 302, headers: { location: String(to) } }));
  vi.resetModules();
  await import('../../../src/service-worker/worker.ts');
  return worker;
}

/** The worker of an edition that is saved and serves. */
export async function serving(edition: OfflineCopy, host: Host, device = new Device()): Promise<Worker> {
  const worker = await start(edition, host, device);
  await worker.install();
  await worker.activate();
  return worker;
}
