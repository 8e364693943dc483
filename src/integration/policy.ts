/*
 * Content security policy of a page: nothing from other sites, our own scripts and a few inline ones by hash, no inline styles, no text
 * parsed as markup. W3C Content Security Policy 3 and Trusted Types. It is in each page, so that it works on hosts without headers.
 * Directives that need a header are in the header files too.
 */
import { createHash } from 'node:crypto';
import type { BuiltPage } from './built-pages.ts';

export type Policy = Readonly<Record<string, string>>;

/** For pages with these inline scripts. `styles`: those of the book, which is one file. */
export function policyOf(html: readonly string[], styles: readonly string[] = []): Policy {
  return {
    'default-src': "'self'",
    'script-src': ["'self'", ...(html.some(searches) ? ["'wasm-unsafe-eval'"] : []), ...inlineScripts(html)].join(' '),
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

/** Only the search page runs WebAssembly, which Pagefind needs. */
export const searches = (html: string): boolean => /<form\b[^>]*\sdata-search-page\b/.test(html);

export const written = (policy: Policy): string =>
  Object.entries(policy)
    .map(([name, from]) => `${name} ${from}`)
    .join('; ');

/** The page with its own policy before everything that it controls. */
export function withPolicy({ html, place }: BuiltPage): string {
  const charset = /<meta charset="utf-8"\s*\/?>/i;
  if (!charset.test(html)) throw new Error(`withPolicy: ${place} names no character set to stand behind`);
  const policy = written(policyOf([html])).replaceAll('"', '&quot;');
  return html.replace(charset, (meta) => `${meta}<meta http-equiv="Content-Security-Policy" content="${policy}">`);
}

function inlineScripts(html: readonly string[]): string[] {
  const scripts = html.flatMap((page) =>
    [...page.matchAll(/<script(?![^>]*\bsrc=)[^>]*>([\s\S]*?)<\/script>/g)].map(([, script]) => script!),
  );
  return [...new Set(scripts)].map(hashOf).sort();
}

/** The hash by which a policy allows inline content. */
export const hashOf = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
