/*
 * Boot script of every page, inlined in the head: it sets the reader's stored choices before the first paint. The function is inlined as
 * text, so it uses nothing from outside its own body.
 */
type Policies = { createPolicy: (name: string, rules: { createScriptURL: (address: string) => string | null }) => unknown };

function boot(base: string): void {
  const policies = (self as { trustedTypes?: Policies }).trustedTypes;
  policies?.createPolicy('default', {
    createScriptURL: (address) => (address.indexOf(`${location.origin}${base}worker`) ? null : address),
  });
  const page = document.documentElement;
  try {
    const stored = JSON.parse(localStorage.getItem(`almanac ${page.dataset['shelf']} forms`) || '{}') as Record<string, unknown>;
    page.classList.add('js');
    for (const key of ['light', 'size', 'hands', 'district', 'units']) {
      const value = stored[key];
      if (typeof value === 'string') page.dataset[key] = value;
    }
    if (!page.dataset['light'] && matchMedia('(prefers-color-scheme:dark)').matches) page.dataset['light'] = 'night';
    if (sessionStorage.getItem(`almanac ${page.dataset['shelf']} room`)) page.dataset['room'] = 'hall';
  } catch {
    page.classList.add('js');
  }
}

/** The script as it stands in the page, on one line. `base` is the path of the site on its host. */
export const bootScript = (base: string): string => `(${String(boot).replace(/\s+/g, ' ')})(${JSON.stringify(base)})`;
