/* Where the addresses lead that the pages of a built and served site name. */
import { addressesIn, idsIn } from './addresses.ts';
import type { Site } from '../setup/built-site.ts';

/** How many addresses its pages name, and "page: address fault" for each that leads nowhere. */
export async function linksOf(site: Site): Promise<{ named: number; faults: string[] }> {
  const named = namedBy(site);
  const faults = await Promise.all(
    [...named].map(async ([address, page]) => (await faultsAt(address, site)).map((fault) => `${page}: ${address} ${fault}`)),
  );
  return { named: named.size, faults: faults.flat() };
}

const fileOf = (page: string, site: Site): string => {
  const path = page.slice(site.base.length);
  return path === '' || path.endsWith('/') ? `${path}index.html` : path;
};

/** Each address, and a page that names it. */
function namedBy(site: Site): Map<string, string> {
  return new Map(
    site.pages.flatMap((page) =>
      addressesIn(site.read(fileOf(page, site)), site.at(page)).map((address): [string, string] => [address, page]),
    ),
  );
}

interface Reply {
  status: number;
  ids: Set<string>;
}
const held = new Map<string, Promise<Reply>>();

/** What is wrong with one address that a page of the site names. */
export async function faultsAt(address: string, site: Site): Promise<string[]> {
  const { origin, pathname, hash, protocol } = new URL(address);
  if (/^(mailto|tel):$/.test(protocol))
    return /^(mailto:[^@\s]+@[^@\s]+|tel:\+?\d{3,})$/.test(address) ? [] : ['is no address to write to or call'];
  if (origin !== new URL(site.address).origin) return protocol === 'https:' ? [] : ['is another host, without https'];
  if (!pathname.startsWith(site.base)) return [`lies outside ${site.base}`];
  if (/\\|\/\//.test(pathname)) return ['has a doubled or a wrong slash'];
  const { status, ids } = await (held.get(origin + pathname) ?? ask(origin + pathname));
  if (status !== 200) return [`answers ${status}`];
  // What stands behind a calculator's # with an equals sign is values, not a place.
  if (hash === '' || (hash.includes('=') && pathname.includes('/work-it-out/'))) return [];
  return ids.has(decodeURIComponent(hash.slice(1))) ? [] : ['names a place that is not on that page'];
}

function ask(address: string): Promise<Reply> {
  const reply = fetch(address, { redirect: 'manual' }).then(async (response) => ({
    status: response.status,
    ids: idsIn(await response.text()),
  }));
  held.set(address, reply);
  return reply;
}
