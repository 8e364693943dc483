/* Panel for sharing a hive's checklist: the browser's share dialog, the link, and its QR code. Loaded on the press of its buttons. */
import { find, id, store } from './checklist.ts';
import { inOpenRun, openRun, type Run } from './record.ts';
import { linkTail } from './share.ts';
import * as text from './share-panel.en.ts';

const panel = document.querySelector<HTMLElement>('#share')!;
const extras = find<HTMLInputElement>('extras');
const place = find('code');
const tell = (words: string): void => void (find('share-status').textContent = words);

/** Nothing that a link could carry. */
const isBlank = ({ day, ticks, notes }: Run): boolean => !day && Object.keys(ticks).length + Object.keys(notes ?? {}).length === 0;

export function toggle(button: HTMLButtonElement): void {
  panel.hidden = !panel.hidden;
  button.setAttribute('aria-expanded', String(!panel.hidden));
  const { name, notes } = openRun(store.read(), id);
  extras.closest('label')!.hidden = !name && !notes;
  panel.querySelector<HTMLElement>('[data-action=send]')!.hidden = !('share' in navigator);
  hideCode();
}

/** The link of the hive on this page. A hive gets its mark when it is first shared. */
function link(): string | null {
  const page = location.href.split('#')[0]!;
  const run = openRun(store.read(), id);
  if (isBlank(run)) return page;
  if (!run.shared) store.change((state) => inOpenRun(state, id, (held) => ({ ...held, shared: Math.random().toString(36).slice(2, 7) })));
  const tail = linkTail(openRun(store.read(), id), { name: extras.checked, notes: extras.checked });
  if (!tail) tell(text.tooLong);
  return tail && page + tail;
}

export async function send(): Promise<void> {
  const url = link();
  if (!url) return;
  try {
    await navigator.share({ title: document.querySelector('h1')!.textContent!, url });
    tell('');
  } catch (error) {
    if ((error as Error).name !== 'AbortError') tell(text.notSent);
  }
}

export async function copy(): Promise<void> {
  const url = link();
  if (!url) return;
  try {
    await navigator.clipboard.writeText(url);
    tell(text.copied);
  } catch {
    const field = Object.assign(document.createElement('input'), { type: 'text', value: url, readOnly: true, ariaLabel: text.link });
    tell(text.copyThis);
    find('share-status').append(field);
    field.select();
  }
}

export async function toggleCode(button: HTMLButtonElement): Promise<void> {
  if (place.firstChild) return hideCode();
  const url = link();
  if (!url) return;
  const { codeOf, drawCode } = await import('../qr/qr.ts');
  const code = codeOf(url);
  if (!code) return tell(text.tooLongForCode);
  place.replaceChildren(drawCode(code, url), Object.assign(document.createElement('p'), { textContent: text.pointCamera }));
  button.setAttribute('aria-expanded', 'true');
  button.lastChild!.textContent = text.hideCode;
  place.scrollIntoView({ block: 'nearest' });
  tell('');
}

function hideCode(): void {
  place.replaceChildren();
  const button = panel.querySelector('[data-action=code]')!;
  button.setAttribute('aria-expanded', 'false');
  button.lastChild!.textContent = text.showCode;
}

// The code shows what was so when it was drawn.
document.addEventListener('change', hideCode);
