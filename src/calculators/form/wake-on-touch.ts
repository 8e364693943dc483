/*
 * Loads a calculator's script on demand: when its form is touched, the address contains values, or the reader chose other units than the
 * club's. Until then a page loads only these lines. A press before the script arrives is repeated afterwards.
 */
import { isWithinSpan, monthDayOf } from '../../../shared/days/year-span.ts';
import { todayIn } from '../../../shared/days/today.ts';
import { windowHere } from './window-here.ts';

/** Chooses the option whose days include today, until the reader chooses another. */
function presetSpan(form: HTMLFormElement): void {
  const options = [...form.querySelectorAll<HTMLOptionElement>('option[data-span]')];
  if (options.length === 0) return;
  const select = options[0]!.parentElement as HTMLSelectElement;
  const today = monthDayOf(todayIn(document.documentElement.dataset.zone!, new Date()));
  const choose = (): void => {
    const now = options.find(({ dataset }) => isWithinSpan(today, ...windowHere(dataset.span!)));
    if (!now || (select.value !== '' && !select.selectedOptions[0]!.defaultSelected)) return;
    // A reset of the form goes back to this choice too.
    for (const option of select.options) option.defaultSelected = option === now;
    now.selected = true;
  };
  choose();
  document.addEventListener('almanac-district', choose);
}

export function wakeOnTouch(tag: string, bring: () => Promise<unknown>): void {
  const form = document.querySelector(`${tag} form`) as HTMLFormElement;
  if (!location.hash.includes('=')) presetSpan(form);
  const { units: own } = form.closest<HTMLElement>(tag)!.dataset;
  let pressed = false;
  const buttons: HTMLButtonElement[] = [];
  let asked: Promise<unknown> | undefined;

  const wake = (): void => {
    asked ??= bring().then(() => {
      form.removeEventListener('submit', keep);
      form.removeEventListener('click', keepButton);
      for (const button of buttons) button.click();
      if (pressed) form.requestSubmit();
    }, () => {
      // Neither the network nor the offline copy has it. The next touch tries again.
      asked = undefined;
    }); // prettier-ignore
  };
  const keep = (event: Event): void => {
    event.preventDefault();
    pressed = true;
    wake();
  };
  const keepButton = ({ target }: Event): void => {
    const button = (target as Element).closest<HTMLButtonElement>('button[type=button]');
    if (button) buttons.push(button);
  };
  const look = (): void => {
    const { units = own } = document.documentElement.dataset;
    if (location.hash.includes('=') || (own && units !== own)) wake();
  };

  form.addEventListener('submit', keep);
  form.addEventListener('click', keepButton);
  // A browser scrolls only the line of the cursor into view, so the rest of the box may be under the bars at the bottom.
  form.addEventListener('focusin', ({ target }) => {
    if (target instanceof HTMLTextAreaElement) target.scrollIntoView({ block: 'nearest' });
  });
  for (const touch of ['focusin', 'pointerdown', 'input']) form.addEventListener(touch, wake);
  window.addEventListener('hashchange', look);
  look();
}
