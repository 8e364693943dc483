/* Headers that a host sends when it reads the site's `_headers`: every rule whose path matches, later ones over earlier. */
import type { Built } from '../setup/built-site.ts';

/** For `serve`: by the path below the base. */
export function headersOf(site: Built): (path: string) => Record<string, string> {
  const rules = site
    .read('_headers')
    .trim()
    .split('\n\n')
    .map((rule) => {
      const [pattern, ...lines] = rule.split('\n');
      return {
        fits: new RegExp(
          `^${pattern!
            .split('*')
            .map((part) => part.replace(/[.+?^${}()|[\]\\]/g, '\\$&'))
            .join('.*')}$`,
        ),
        headers: lines.map(
          (line) =>
            line
              .trim()
              .split(/: (.*)/s)
              .slice(0, 2) as [string, string],
        ),
      };
    });
  return (path) =>
    Object.fromEntries(
      rules
        .filter(({ fits }) => fits.test(site.base + path))
        .flatMap(({ headers }) => headers)
        .map(([name, value]) => [name.toLowerCase(), value]),
    );
}
