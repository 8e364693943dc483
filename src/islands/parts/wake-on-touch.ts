/*
 * Brings a calculator when it is wanted: its form is touched, or the address holds values. Until then a page is read for
 * the price of these lines. A press that comes before the calculator does is kept for it.
 */
export function wakeOnTouch(tag: string, bring: () => Promise<unknown>): void {
  const form = document.querySelector(`${tag} form`) as HTMLFormElement;
  let pressed = false;
  let asked: Promise<unknown> | undefined;

  const wake = (): void => {
    asked ??= bring().then(() => {
      form.removeEventListener('submit', keep);
      if (pressed) form.requestSubmit();
    }, () => {
      // Not there and not in the offline copy: the next touch asks again.
      asked = undefined;
    }); // prettier-ignore
  };
  const keep = (event: Event): void => {
    event.preventDefault();
    pressed = true;
    wake();
  };
  const look = (): void => {
    if (location.hash.includes('=')) wake();
  };

  form.addEventListener('submit', keep);
  for (const touch of ['focusin', 'pointerdown', 'input']) form.addEventListener(touch, wake);
  window.addEventListener('hashchange', look);
  look();
}
