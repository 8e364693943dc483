/*
 * Opens the note of a source mark beside the mark, as a copy of the note in the list of sources. It closes on Esc, on a press outside it
 * and when Tab leaves it, and the focus goes back to the mark.
 */
import * as text from './source-note.en.ts';

export function open(mark: HTMLAnchorElement): void {
  const box = document.createElement('div');
  const note = document.querySelector(mark.hash);
  // A browser without popovers follows the link.
  if (!note || !('showPopover' in box)) return location.assign(mark.hash);
  box.id = 'source-note';
  box.className = 'source-note';
  box.popover = 'auto';
  box.tabIndex = -1;
  box.role = 'dialog';
  box.ariaLabel = text.source(mark.textContent!);
  const close = document.createElement('button');
  close.textContent = text.close;
  close.addEventListener('click', () => box.hidePopover());
  box.append(...[...note.cloneNode(true).childNodes], close);
  const stops = [...box.querySelectorAll<HTMLElement>('a, button')];

  const place = () => {
    const at = mark.getBoundingClientRect();
    const { offsetWidth: width, offsetHeight: height } = box;
    const { clientWidth, clientHeight } = document.documentElement;
    const covered = document.querySelector<HTMLElement>('.bottom-nav')!.getBoundingClientRect();
    const floor = covered.top > at.bottom ? covered.top : clientHeight;
    const isAbove = at.bottom + height + GAP > floor && at.top - height - GAP > 0;
    box.style.left = `${Math.max(GAP, Math.min(at.left - 2 * GAP, clientWidth - width - GAP))}px`;
    box.style.top = `${scrollY + (isAbove ? at.top - height - GAP : at.bottom + GAP)}px`;
  };
  box.addEventListener('keydown', (event) => {
    if (event.key !== 'Tab') return;
    const isFirst = document.activeElement === box || document.activeElement === stops[0];
    if (event.shiftKey ? !isFirst : document.activeElement !== close) return;
    box.hidePopover();
    mark.focus();
    // Forward, the browser itself goes on from the mark.
    if (event.shiftKey) event.preventDefault();
  });
  box.addEventListener('toggle', ({ newState }) => {
    if (newState === 'open') return;
    mark.ariaExpanded = 'false';
    mark.removeAttribute('aria-controls');
    removeEventListener('resize', place);
    box.remove();
    if (document.activeElement === document.body) mark.focus({ preventScroll: true });
  });

  document.body.append(box);
  mark.focus({ preventScroll: true });
  box.showPopover();
  place();
  addEventListener('resize', place);
  box.focus();
  mark.ariaExpanded = 'true';
  mark.setAttribute('aria-controls', box.id);
}

/** Space in px between the note and its mark, and between the note and the edge of the screen. */
const GAP = 8;
