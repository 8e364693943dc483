/* Finds the targets of all addresses in the pages of a built and served site. */
import { addressesIn, idsIn } from './addresses.ts';
import type { Site } from '../setup/built-site.ts';

/** The number of addresses in its pages, and "page: address fault" for each without a target. */
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

/** Each address, and a page that contains it. */
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

/** The fault of one address in a page of the site. */
export async function faultsAt(address: string, site: Site): Promise<string[]> {
  const { origin, pathname, hash, protocol } = new URL(address);
  if (/^(mailto|tel):$/.test(protocol))
    return /^(mailto:[^@\s]+@[^@\s]+|tel:\+?\d{3,})$/.test(address) ? [] : ['is no address to write to or call'];
  if (origin !== new URL(site.address).origin) return protocol === 'https:' ? [] : ['is another host, without https'];
  if (!pathname.startsWith(site.base)) return [`lies outside ${site.base}`];
  if (/\\|\/\//.test(pathname)) return ['has a doubled or a wrong slash'];
  const { status, ids } = await (held.get(origin + pathname) ?? ask(origin + pathname));
  if (status !== 200) return [`answers ${status}`];
  // Text with an equals sign after a calculator's # is values, not a fragment.
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
