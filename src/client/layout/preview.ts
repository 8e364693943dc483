/*
 * Preview of `npm run dev`: puts the panel of the preview's server above the main text, and says on the page whose each text is. What a
 * reader opened stays open after a file is saved. No built page loads this file.
 */
export {};
const main = document.querySelector('main')!;
const answer = await fetch(`/almanac-preview.html?page=${encodeURIComponent(location.pathname)}`);
main.insertAdjacentHTML('beforebegin', await answer.text());

/** Names of the folds that are open, and `marks`. */
const OPEN = 'almanac-preview';
const open = new Set((sessionStorage.getItem(OPEN) ?? 'marks').split(' '));
const keep = (name: string, isOpen: boolean): void => {
  open[isOpen ? 'add' : 'delete'](name);
  sessionStorage.setItem(OPEN, [...open].join(' '));
};

for (const fold of document.querySelectorAll<HTMLDetailsElement>('[data-preview]')) {
  const name = fold.dataset.preview!;
  fold.open = open.has(name);
  fold.addEventListener('toggle', () => keep(name, fold.open));
}

const box = document.querySelector<HTMLInputElement>('[data-preview-marks]');
if (box) {
  box.checked = open.has('marks');
  box.addEventListener('change', () => {
    keep('marks', box.checked);
    mark(box.checked);
  });
  mark(box.checked);
}

/** A line above the first text of each file, and a bar beside every text. */
function mark(isShown: boolean): void {
  for (const line of document.querySelectorAll('.preview-from')) line.remove();
  let before = '';
  for (const text of main.querySelectorAll<HTMLElement>('[data-written]')) {
    const [, path, line] = /^(.*):(\d+)$/.exec(text.dataset.written!)!;
    const book = /^books\/([^/]+)\//.exec(path!)?.[1];
    // The frame of a table would cut its bar off.
    const block = text.closest<HTMLElement>('.scroll-x') ?? text;
    if (isShown) block.dataset.previewWhose = book ? 'book' : 'club';
    else delete block.dataset.previewWhose;
    if (isShown && path !== before) {
      const from = Object.assign(document.createElement('p'), {
        className: 'preview-from',
        textContent: `${book ? `From the book "${book}"` : 'Of your club'}: ${path}, line ${line}`,
      });
      (block.closest('summary')?.parentElement ?? block).before(from);
    }
    before = path!;
  }
}
