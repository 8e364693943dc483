/*
 * Ticks of a checklist, kept in this browser by the step's own id, so that rewording or moving a step never moves a
 * tick. Ticks of steps that are gone stay in the store untouched.
 */
export {};

const list = document.querySelector<HTMLElement>('[data-list]')!;
const shelf = `almanac ${document.documentElement.dataset.shelf} ticks ${list.dataset.list}`;
const boxes = [...list.querySelectorAll<HTMLInputElement>('input[data-tick]')];
const progress = document.querySelector<HTMLElement>('[data-progress]')!;
let notKept = '';

function kept(): Record<string, string> {
  try {
    const ticks: unknown = JSON.parse(localStorage.getItem(shelf) ?? '{}');
    return typeof ticks === 'object' && ticks !== null && !Array.isArray(ticks) ? (ticks as Record<string, string>) : {};
  } catch {
    return {};
  }
}

function keep(id: string, ticked: boolean): void {
  const ticks = kept();
  if (ticked) ticks[id] = 'done';
  else delete ticks[id];
  write(ticks);
}

function write(ticks: Record<string, string>): void {
  const text = JSON.stringify(ticks);
  try {
    localStorage.setItem(shelf, text);
    notKept = localStorage.getItem(shelf) === text ? '' : ' This browser did not keep that tick.';
  } catch {
    notKept = ' This browser keeps no ticks: they last until you leave the page.';
  }
}

function show(): void {
  const ticks = kept();
  if (!notKept) for (const box of boxes) box.checked = Object.hasOwn(ticks, box.dataset.tick!);
  say();
}

function say(): void {
  const done = boxes.filter((box) => box.checked).length;
  const next = boxes.find((box) => !box.checked)?.closest('label')?.querySelector('.step-words')?.textContent?.trim();
  progress.hidden = false;
  progress.textContent = `${done} of ${boxes.length} done.${next && done > 0 ? ` Next: ${next}` : done === boxes.length ? ' All done.' : ''}${notKept}`;
}

list.addEventListener('change', (event) => {
  const box = event.target as HTMLInputElement;
  if (!box.dataset.tick) return;
  keep(box.dataset.tick, box.checked);
  say();
});

const again = document.querySelector<HTMLButtonElement>('[data-start-again]')!;
again.hidden = false;
again.addEventListener('click', () => {
  if (!confirm('Take all ticks off this list? Other lists keep theirs.')) return;
  const ticks = kept();
  for (const box of boxes) {
    delete ticks[box.dataset.tick!];
    box.checked = false;
  }
  write(ticks);
  say();
});

const printing = document.querySelector<HTMLButtonElement>('[data-print]')!;
printing.hidden = false;
printing.addEventListener('click', () => window.print());

window.addEventListener('storage', (event) => {
  if (event.key === shelf) show();
});
window.addEventListener('pageshow', show);
show();
