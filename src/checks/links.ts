/* Checks links: each leads to a page of this site, to a fragment on it, or to a complete address elsewhere. */
import type { Link } from 'mdast';
import { quoted, type Diagnostic } from '../source/diagnostic.ts';
import type { Entry } from '../source/folder.ts';
import { isTag, walk } from '../source/prose.ts';
import { collections } from '../schemas/collections.ts';
import { calculatorNames } from '../schemas/calculators.ts';
import { exampleFaults, valuesWrong } from './calculator-values.ts';
import { addressesOf, namesOn, type Addresses } from './addresses.ts';
import type { ValidEntries } from './fields.ts';
import { fileLinkWrong, leadsToFile, pdfsIn } from './files.ts';
import { isOnOwnComputer } from './own-computer.ts';
import { nearName } from '../../shared/words/near-name.ts';
import { pageMeant } from './suggestions.ts';
import { atField, atNode, isDraft, isPage, sourceOf, type Page, type Message } from './place.ts';

type Wrong = Pick<Message, 'found' | 'write'>;

export function linkFaults(club: ValidEntries): Diagnostic[] {
  const addresses = addressesOf(club);
  return [
    ...club.folder.entries.filter(isPage).flatMap((page) =>
      [...walk(page.tree)].flatMap((node): Diagnostic[] => {
        if (node.type === 'link') return fault(page, node, linkWrong(node, page, addresses, club.club?.data.site));
        if (isTag(node) && node.name === 'Example') return exampleFaults(page, node);
        return [];
      }),
    ),
    ...[...club.of.words, ...club.of.cautions].flatMap((entry) => addressFault(entry, 'more', entry.data.more)),
    ...club.of.answers.flatMap((entry) => addressFault(entry, 'page', entry.data.page)),
  ];

  function addressFault(entry: Entry, field: string, url: string | undefined): Diagnostic[] {
    if (url === undefined) return [];
    const wrong = fieldWrong(url, entry, addresses, club.club?.data.site);
    return wrong ? [atField(entry, [field], { rule: 'link', field, ...wrong })] : [];
  }

  function fault(page: Page, node: Link, wrong: Wrong | null): Diagnostic[] {
    return wrong ? [atNode(page, node, { rule: 'link', field: 'a link', ...wrong })] : [];
  }
}

/** What is wrong with the address of a field, which leads to a page of this site or to a file of the club. Null where nothing is. */
export function fieldWrong(url: string, entry: Entry, addresses: Addresses, site: string | undefined): Wrong | null {
  if (leadsToFile(url)) return fileLinkWrong(url, pdfsIn(addresses.club.folder.files));
  if (url.startsWith('/')) return inside(url, entry, addresses);
  const own = site === undefined ? null : onOwnSite(url, site);
  if (own !== null) return { found: `"${url}"`, write: inside(own, entry, addresses)?.write ?? `"${own}"` };
  return isOnOwnComputer(url) ? ofPreview(new URL(url), url, entry, addresses) : relative(url, addresses);
}

/** Links to the club's own site that are written as those to another. */
export function linkHints(club: ValidEntries): Diagnostic[] {
  const site = club.club?.data.site;
  if (site === undefined) return [];
  const addresses = addressesOf(club);
  return club.folder.entries.filter(isPage).flatMap((page) =>
    [...walk(page.tree)].flatMap((node): Diagnostic[] => {
      const own = node.type === 'link' ? onOwnSite(node.url, site) : null;
      if (own === null || inside(own, page, addresses) !== null) return [];
      return [
        atNode(page, node, {
          rule: 'link',
          field: 'a link',
          found: `"${(node as Link).url}", a page of this almanac`,
          write: `"${own}", which is also found offline and in the preview`,
        }),
      ];
    }),
  );
}

/** The address on this site, from its first slash on. Null for another site. */
function onOwnSite(url: string, site: string): string | null {
  const base = site.replace(/\/*$/, '/').replace(/^https?:/, '');
  const address = url.replace(/^https?:/, '');
  return address.startsWith(base) ? `/${address.slice(base.length)}` : null;
}

function linkWrong(node: Link, page: Page, addresses: Addresses, site?: string): Wrong | null {
  const { url } = node;
  const typed = sourceOf(page, node);
  const bare = !typed.startsWith('[');
  if (bare && page.body[(node.position?.start.offset ?? 0) - 1] === '<') return null;
  if (bare && /[|<>"]/.test(url)) {
    const clean = url.replace(/[|<>"].*$/, '').replace(/^http:\/\/(?=www)/, 'https://');
    return { found: `the address ${clean} with ${quoted(/[|<>"]/.exec(url)![0])} glued to it`, write: `[words](${clean})` };
  }
  if (!bare && node.children.length === 0)
    return { found: `a link without words to ${url || 'nowhere'}`, write: '[the words to press](the address)' };
  if (url === '') return { found: 'a link without an address', write: 'an address such as /pests/varroa/ in the round brackets' };
  if (/^(?:[a-z]:[\\/]|\\\\)/i.test(url))
    return { found: `"${url}", a file on one computer`, write: 'an address that begins with / for this site or https:// for another' };
  if (/\\/.test(url)) return { found: `"${url}" with back-slashes`, write: `"${url.replaceAll('\\', '/')}"` };
  if (url.startsWith('//'))
    return { found: `"${url}" with two slashes at its start`, write: `"https:${url}" for another site, or one slash for this one` };
  if (leadsToFile(url)) return null;
  if (url.startsWith('#')) return onPage(url.slice(1), namesOn(page), 'this page');
  if (url.startsWith('/')) return inside(url, page, addresses);
  const own = site === undefined ? null : onOwnSite(url, site);
  if (own !== null) return inside(own, page, addresses);
  if (isOnOwnComputer(url)) return ofPreview(new URL(url), url, page, addresses);
  if (/^[a-z][a-z0-9+.-]*:/i.test(url)) return outside(url);
  return relative(url, addresses);
}

function ofPreview({ pathname, hash }: URL, url: string, page: Entry, addresses: Addresses): Wrong {
  const address = pathname + hash;
  return {
    found: `"${url}", the preview on your own computer`,
    write: inside(address, page, addresses)?.write ?? `"${address}"`,
  };
}

/** A link to another site, an e-mail address or a telephone number. */
function outside(url: string): Wrong | null {
  if (/^https?:/i.test(url)) {
    const good = URL.canParse(url) && /^https?:\/\/[^/\s]+/i.test(url) && /\./.test(new URL(url).hostname);
    return good && !/[<>|]/.test(url) ? null : { found: `"${url}"`, write: 'a whole address such as https://example.org/bees' };
  }
  if (/^mailto:[^@\s]+@[^@\s]+\.[^@\s]+$/i.test(url)) return null;
  if (/^tel:\+?[\d-]{3,}$/i.test(url)) return null;
  return { found: `"${url}"`, write: 'an address that begins with / for this site or https:// for another' };
}

function inside(url: string, from: Entry, addresses: Addresses): Wrong | null {
  if (leadsToFile(url)) return null;
  const { known, drafts } = addresses;
  const [, path, query, fragment] = /^([^?#]*)(\?[^#]*)?(?:#(.*))?$/s.exec(url)!;
  const address = plain(path!);
  if (query !== undefined && address !== '/search/')
    return { found: `"${url}" with a question mark`, write: 'the address without it; values of a calculator go behind #' };
  if (drafts.has(address) && !isDraft(from))
    return {
      found: `"${address}", a draft, which readers cannot open`,
      write: 'a page that is not a draft, or take "draft: true" out of that one',
    };
  if (!known.has(address)) {
    if (known.has(`${address}/`))
      return { found: `"${url}" without the last slash`, write: `"${address}/${fragment === undefined ? '' : `#${fragment}`}"` };
    if (FILE.test(address)) return { found: `"${url}", a file that is not part of the almanac`, write: OF_FILE };
    return { found: `"${url}", which is no page of this almanac`, write: near(address, addresses) };
  }
  if (fragment === undefined || fragment === '') return null;
  if (address.startsWith('/work-it-out/')) return valuesWrong(address.split('/')[2], fragment, '#')[0] ?? null;
  const names = known.get(address);
  return names ? onPage(fragment, names, address!) : null;
}

function onPage(fragment: string, names: Set<string>, where: string): Wrong | null {
  const name = plain(fragment);
  if (names.has(name)) return null;
  const suggestion = nearName(name, names);
  return {
    found: `"#${fragment}", which is not on ${where}`,
    write: suggestion ? `"#${suggestion}"` : 'the name of one of its headings, or no # at all',
  };
}

const FILE = /\.(?:pdf|docx?|odt|xlsx?|ods|csv|txt|rtf|zip|ics|epub|jpe?g|png|gif|webp|heic|svg)$/i;

/** Nothing is near. */
const NO_PAGE = 'the address of a page that is there: open it in the preview, and copy what follows the name of the site';

const OF_FILE =
  'its words in a page; or save it as PDF in the folder files/ of the club, and write that address, such as "/files/form.pdf"';

/** `varroa.mdx`, `../pests/varroa`: the page that the author may mean. */
function relative(url: string, { known }: Addresses): Wrong {
  const name = plain(url)
    .replace(/[?#].*$/, '')
    .replace(/\.(?:mdx?|html?|yaml)$/i, '')
    .replace(/\/+$/, '')
    .split('/')
    .at(-1)!;
  const same = [...known.keys()].filter((address) => address.endsWith(`/${name}/`));
  const host = /^[\w-]+(?:\.[\w-]+)+(?:\/|$)/.test(url) && !/\.(?:mdx?|html?|yaml)$/i.test(url);
  if (FILE.test(url))
    return {
      found: `"${url}", a file that is not part of the almanac`,
      write: OF_FILE,
    };
  return {
    found: `"${url}", which does not begin with a slash`,
    write: same[0] && name ? `"${same[0]}"` : host ? `"https://${url}"` : 'the whole address from the first slash, such as /pests/varroa/',
  };
}

function near(address: string, { known, club }: Addresses): string {
  const lower = address
    .toLowerCase()
    .replace(/\/*$/, '/')
    .replace(/\.(?:mdx?|html?)\/$/, '/')
    .replace(/\/index\/$/, '/');
  if (known.has(lower)) return `"${lower}"`;
  const meant = pageMeant(club, lower);
  if (meant === null) {
    const name = nearName(lastName(lower), calculatorNames);
    return name ? `"/work-it-out/${name}/"` : NO_PAGE;
  }
  const found = `${collections[meant.collection].path!}${meant.id}/`;
  const file = `${meant.collection}/${meant.id}${collections[meant.collection].ending}`;
  return meant.why === 'renamed'
    ? `"${found}", and in ${file} a line "formerly: [${lower}]", so that old links still lead there`
    : `"${found}"`;
}

const lastName = (address: string): string => address.split('/').at(-2) ?? '';

function plain(address: string): string {
  try {
    return decodeURIComponent(address);
  } catch {
    return address;
  }
}
