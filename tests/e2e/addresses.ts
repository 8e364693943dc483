/* Addresses in a built page: links, forms, files, and references inside drawings. */
const tag = /<([a-zA-Z][\w-]*)((?:\s+[^\s=>"'/]+(?:\s*=\s*"[^"]*")?)*)\s*\/?>/g;
const attribute = /\s([^\s=>"'/]+)\s*=\s*"([^"]*)"/g;
const named = new Set(['href', 'src', 'action', 'poster', 'xlink:href']);
const signs: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

const decoded = (text: string): string =>
  text.replace(/&(?:#x([0-9a-f]+)|#(\d+)|(\w+));/gi, (whole, hex, digits, name) =>
    name ? (signs[name] ?? whole) : String.fromCodePoint(Number.parseInt(hex ?? digits, hex ? 16 : 10)),
  );

/** Complete addresses, resolved as a browser at the address `at` would resolve them. */
export function addressesIn(html: string, at: string): string[] {
  const body = html.replace(/(<script\b[^>]*>)[\s\S]*?(<\/script>)/g, '$1$2');
  return [...body.matchAll(tag)].flatMap(([, , attributes]) =>
    [...attributes!.matchAll(attribute)].filter(([, name]) => named.has(name!)).map(([, , value]) => new URL(decoded(value!), at).href),
  );
}

/** The fragments that exist on a page. */
export const idsIn = (html: string): Set<string> => new Set([...html.matchAll(/\sid="([^"]+)"/g)].map((match) => decoded(match[1]!)));
