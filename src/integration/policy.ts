/*
 * The policy under which a page runs: nothing from elsewhere, scripts of our own and the few in the page by their hash, no
 * style in the page, no text taken for markup. W3C Content Security Policy 3 and Trusted Types. It stands in each page, so
 * that it holds on hosts that send no headers; what only a header can say is in the header files too.
 */
import { createHash } from 'node:crypto';
import type { BuiltPage } from './built-pages.ts';

export type Policy = Readonly<Record<string, string>>;

/** Of pages with these scripts in them. `styles`: those of the book, which is one file. */
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
    // The one policy is in the page's own script: it lets the address of our worker through, and no markup.
    'trusted-types': 'default',
  };
}

/** The search page alone runs WebAssembly, in which its engine is written. */
export const searches = (html: string): boolean => /<form\b[^>]*\sdata-search-page\b/.test(html);

export const written = (policy: Policy): string =>
  Object.entries(policy)
    .map(([name, from]) => `${name} ${from}`)
    .join('; ');

/** The page with its own policy in it, before anything that it rules. */
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

/** By which a policy knows what stands in a page itself. */
export const hashOf = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
