/* robots.txt. A demonstration must not be found. Robots read this file only at the root of a host. `root` is the address of the first page, where the site has one. */
export function robots(root: string | null, demonstration: boolean): string {
  if (demonstration) return 'User-agent: *\nDisallow: /\n';
  return `User-agent: *\nDisallow:\n${root ? `\nSitemap: ${new URL('sitemap.xml', root).href}\n` : ''}`;
}
