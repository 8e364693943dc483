/* Shows form errors twice in the same words: in a list above the form, and beside each field. */
import type { FormError } from './field.ts';
import { make } from './make.ts';

export function markFaults(faults: readonly FormError[]): void {
  for (const [at, { box, words }] of faults.entries()) {
    box.id ||= `box-${at + 1}-${box.getAttribute('name')}`;
    const told = marked(box);
    const place = box.closest<HTMLElement>('[data-row-of], .field')!;
    place.classList.add('wrong');
    box.closest('details')?.setAttribute('open', '');
    told.setAttribute('aria-invalid', 'true');
    told.setAttribute('aria-describedby', `${told.getAttribute('aria-describedby') ?? ''} fault-${box.id}`.trim());
    place.append(make('span', { class: 'fault', id: `fault-${box.id}` }, words));
  }
}

/** Removes all error marks. */
export function unmark(within: Element): void {
  for (const told of within.querySelectorAll('[aria-invalid]')) {
    told.removeAttribute('aria-invalid');
    const others = (told.getAttribute('aria-describedby') ?? '').split(' ').filter((id) => id && !id.startsWith('fault-'));
    if (others.length > 0) told.setAttribute('aria-describedby', others.join(' '));
    else told.removeAttribute('aria-describedby');
  }
  for (const said of within.querySelectorAll('.fault')) said.remove();
  for (const place of [within, ...within.querySelectorAll('.wrong')]) place.classList.remove('wrong');
}

export function listFaults(list: HTMLElement, faults: readonly FormError[]): void {
  list.hidden = faults.length === 0;
  list.replaceChildren(
    make('h2', {}, faults.length === 1 ? 'One box to mend' : `${faults.length} boxes to mend`),
    make('ul', {}, ...faults.map(({ box, words }) => {
      const link = make('a', { href: `#${box.id}` }, words);
      link.addEventListener('click', (event) => {
        // The address contains the form's values, so the link must not replace it with the id of a field.
        event.preventDefault();
        box.focus();
      });
      return make('li', {}, link);
    })),
  ); // prettier-ignore
}

/** For radio buttons the error belongs to the group, not to its first button. */
function marked(box: HTMLElement): HTMLElement {
  return (box instanceof HTMLInputElement && box.type === 'radio' && box.closest('fieldset')) || box;
}
