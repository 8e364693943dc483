/*
 * Content security policy of a page: nothing from other sites, our own scripts and a few inline ones by hash, no inline styles, no text
 * parsed as markup. W3C Content Security Policy 3 and Trusted Types. It is in each page, so that it works on hosts without headers.
 * Directives that need a header are in the header files too.
 */
import { createHash } from 'node:crypto';
import type { BuiltPage } from './built-pages.ts';

export type Policy = Readonly<Record<string, string>>;

/** For pages with these inline scripts. `styles`: those of the book, which is one file. */
export function policyOf(pages: readonly BuiltPage[], styles: readonly string[] = []): Policy {
  const inlineScripts = [...new Set(pages.flatMap(({ scripts }) => scripts))].map(hashOf).sort();
  return {
    'default-src': "'self'",
    'script-src': ["'self'", ...(pages.some(({ searches }) => searches) ? ["'wasm-unsafe-eval'"] : []), ...inlineScripts].join(' '),
    'style-src': ["'self'", ...styles.map(hashOf)].join(' '),
    'img-src': "'self' data: blob:",
    'object-src': "'none'",
    'base-uri': "'none'",
    'form-action': "'self'",
    'require-trusted-types-for': "'script'",
    // The only Trusted Types policy is in the page's own script. It allows the address of our worker and no markup.
    'trusted-types': 'default',
  };
}

export const written = (policy: Policy): string =>
  Object.entries(policy)
    .map(([name, from]) => `${name} ${from}`)
    .join('; ');

/** The page with its own policy before everything that it controls. */
export function withPolicy(page: BuiltPage): string {
  const { html, place } = page;
  const charset = /<meta charset="utf-8"\s*\/?>/i;
  if (!charset.test(html)) throw new Error(`withPolicy: ${place} names no character set to stand behind`);
  const policy = written(policyOf([page])).replaceAll('"', '&quot;');
  return html.replace(charset, (meta) => `${meta}<meta http-equiv="Content-Security-Policy" content="${policy}">`);
}

/** The hash by which a policy allows inline content. */
export const hashOf = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
