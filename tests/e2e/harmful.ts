/*
 * Harmful text for injection tests, and detection of its effects in the page. Text that would run calls `planted()`. Elements that would
 * appear are named <planted-part> or load /planted.
 */
import fc from 'fast-check';
import type { Page } from '@playwright/test';

const MARKS = [
  '<planted-part>',
  '<img src=/planted onerror=planted()>',
  '"><script>planted()</script>',
  "'><svg onload=planted()>",
  '</script><script>planted()</script>',
  '--><planted-part>',
  ']]><planted-part/>',
  '</textarea><planted-part>',
  '</style><planted-part>',
  '</title><planted-part>',
  '<a href=javascript:planted()>x</a>',
  'javascript:planted()',
  'data:text/html,<script>planted()</script>',
  '" onfocus="planted()" autofocus="',
  "' onmouseover='planted()",
  '<iframe srcdoc="<script>parent.planted()</script>">',
  '{{constructor.constructor("planted()")()}}',
  '${planted()}',
  '`${planted()}`',
  '&lt;planted-part&gt;',
  '&#60;planted-part&#62;',
  '%3Cplanted-part%3E',
  '\\u003cplanted-part\\u003e',
  '\uFF1Cplanted-part\uFF1E',
  '__proto__',
  'constructor',
  'toString',
  '=cmd|planted',
  '\u202Egnp.part',
  '\u0000',
  '\u0007',
  '\u2028',
  '\uD800',
  '\uFEFF',
] as const;

/** One of the harmful texts, alone or between other text. */
export const harmful = fc
  .tuple(
    fc.string({ unit: 'binary', maxLength: 6 }),
    fc.constantFrom(...MARKS),
    fc.constantFrom('', ' and more', ';', ',', ':', '/', '=', '&'),
  )
  .map((parts) => parts.join(''));

interface Watched {
  told: string[];
  planted: () => void;
}

/** Call before the page opens. From then on everything that runs, is refused, or makes a request is recorded. */
export async function watchFor(page: Page): Promise<string[]> {
  const told: string[] = [];
  page.on('dialog', (dialog) => {
    if (dialog.type() === 'alert') told.push(`it says ${dialog.message()}`);
    void dialog.accept().catch(() => undefined);
  });
  page.on('pageerror', (error) => told.push(`a script breaks: ${error}`));
  page.on('request', (request) => void (request.url().includes('/planted') && told.push(`it asks for ${request.url()}`)));
  await page.addInitScript(() => {
    const here = globalThis as unknown as Watched;
    here.told = [];
    here.planted = () => here.told.push('it runs');
    document.addEventListener('securitypolicyviolation', ({ violatedDirective, sample }) =>
      here.told.push(`${violatedDirective} refuses ${sample}`),
    );
  });
  return told;
}

/** The effects in the page as it is now. Runs inside the page. */
export function harmDone(): string[] {
  const found = [...(globalThis as unknown as Watched).told.splice(0)];
  for (const element of document.querySelectorAll('*')) {
    const name = element.tagName.toLowerCase();
    if (/^(planted|iframe|object|embed|base)/.test(name)) found.push(`<${name}> came`);
    for (const { name: attribute, value } of element.attributes) {
      if (/^on/i.test(attribute)) found.push(`<${name} ${attribute}> came`);
      if (
        /^(src|href|action|formaction|srcdoc|data|xlink:href)$/i.test(attribute) &&
        /^\s*(javascript|data:text|vbscript):?|planted/i.test(value) &&
        !/[?#]/.test(value)
      )
        found.push(`<${name} ${attribute}="${value}"> came`);
    }
  }
  if ('planted' in Object.prototype || ({} as Record<string, unknown>).ticks !== undefined) found.push('every object has it');
  return found;
}
