/* Shows form errors twice in the same words: in a list above the form, and beside each field. */
import type { FormError } from './field.ts';
import { make } from './make.ts';
import * as text from './text.en.ts';

export function markFaults(faults: readonly FormError[]): void {
  for (const [at, { box, words, fixes = [] }] of faults.entries()) {
    box.id ||= `box-${at + 1}-${box.getAttribute('name')}`;
    const field = marked(box);
    const place = box.closest<HTMLElement>('[data-row-of], .field')!;
    place.classList.add('wrong');
    box.closest('details')?.setAttribute('open', '');
    field.setAttribute('aria-invalid', 'true');
    field.setAttribute('aria-describedby', `${field.getAttribute('aria-describedby') ?? ''} fault-${box.id}`.trim());
    place.append(make('span', { class: 'fault', id: `fault-${box.id}` }, words));
    // After a type of box that many lines share, a button would replace all of them.
    if (fixes.length > 0 && box instanceof HTMLInputElement)
      place.append(
        make(
          'p',
          { class: 'fault fixes' },
          ...fixes.map((fix) => make('button', { type: 'button', 'data-fix': fix, 'data-of': box.id }, text.use(fix))),
        ),
      );
  }
}

/** Removes all error marks. */
export function unmark(within: Element): void {
  for (const field of within.querySelectorAll('[aria-invalid]')) {
    field.removeAttribute('aria-invalid');
    const others = (field.getAttribute('aria-describedby') ?? '').split(' ').filter((id) => id && !id.startsWith('fault-'));
    if (others.length > 0) field.setAttribute('aria-describedby', others.join(' '));
    else field.removeAttribute('aria-describedby');
  }
  for (const sentence of within.querySelectorAll('.fault')) sentence.remove();
  for (const place of [within, ...within.querySelectorAll('.wrong')]) place.classList.remove('wrong');
}

export function listFaults(list: HTMLElement, faults: readonly FormError[]): void {
  list.hidden = faults.length === 0;
  list.replaceChildren(
    make('h2', {}, text.thereAre(faults.length)),
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
