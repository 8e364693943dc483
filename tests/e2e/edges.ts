/* Contrast rules for non-text parts, which run inside the page: edges of controls, shapes, and letters in drawings. */

/** Edges of controls, and the shape of a status, have a contrast of 4.5 to 1. WCAG 2.2, 1.4.11 requires 3. */
export function paleEdges(): string[] {
  const faults = new Set<string>();
  const parts = (colour: string): number[] => (colour.match(/[\d.]+/g) ?? []).map(Number);
  const light = (colour: string): number => {
    const part = (value = 0): number => (value <= 10 ? value / 3294 : ((value / 255 + 0.055) / 1.055) ** 2.4);
    const [red, green, blue] = parts(colour);
    return 0.2126 * part(red) + 0.7152 * part(green) + 0.0722 * part(blue);
  };
  const ratio = (one: string, other: string): number => {
    const [dark, bright] = [light(one), light(other)].sort((a, b) => a - b) as [number, number];
    return (bright + 0.05) / (dark + 0.05);
  };
  const ground = (element: Element | null): string => {
    for (let at = element; at; at = at.parentElement)
      if ((parts(getComputedStyle(at).backgroundColor)[3] ?? 1) > 0) return getComputedStyle(at).backgroundColor;
    return getComputedStyle(document.documentElement).colorScheme === 'dark' ? 'rgb(0, 0, 0)' : 'rgb(255, 255, 255)';
  };
  const name = (element: Element): string =>
    `<${element.tagName.toLowerCase()}> "${(element.textContent || element.getAttribute('aria-label') || (element as HTMLInputElement).name || '').trim().replace(/\s+/g, ' ').slice(0, 40)}"`;
  for (const control of document.querySelectorAll<HTMLElement>('button, .button, .choices > label, input, select, textarea')) {
    // Only the button of a file field is drawn.
    const style = getComputedStyle(control, control.matches('[type=file]') ? '::file-selector-button' : null);
    // The browser itself draws a checkbox or radio button.
    if (
      !control.checkVisibility({ visibilityProperty: true, opacityProperty: true }) ||
      control.closest('.visually-hidden') ||
      (control.matches('[type=checkbox], [type=radio]') && style.appearance !== 'none')
    )
      continue;
    const around = ground(control.parentElement);
    const edge = style.borderTopStyle === 'none' || style.borderTopWidth === '0px' ? style.backgroundColor : style.borderTopColor;
    // A button without a frame is known by its words, whose contrast has a rule of its own (Understanding WCAG 2.2, 1.4.11: boundaries).
    const isFrameless = (parts(edge)[3] ?? 1) === 0;
    if (isFrameless && control.matches('button, .button') && (control.textContent!.trim() !== '' || control.querySelector('svg'))) continue;
    if (ratio(edge, around) < 4.5)
      faults.add(`the edge of ${name(control)} in ${edge} on ${around} is ${ratio(edge, around).toFixed(1)} to 1`);
  }
  for (const status of document.querySelectorAll<HTMLElement>('.status')) {
    if (!status.checkVisibility({ visibilityProperty: true })) continue;
    const shape = getComputedStyle(status, '::before');
    if (shape.content === 'none') faults.add(`${name(status)} has no shape`);
    else if (ratio(shape.borderTopColor, ground(status)) < 4.5)
      faults.add(`the shape of ${name(status)} in ${shape.borderTopColor} on ${ground(status)}`);
    if (status.textContent!.trim() === '') faults.add('a status has no word');
  }
  return [...faults];
}

/** Letters in drawings have a contrast of 7 to 1 with the shape below them, as the browser finds it. */
export function paleLetters(): string[] {
  const faults = new Set<string>();
  const parts = (colour: string): number[] => (colour.match(/[\d.]+/g) ?? []).map(Number);
  const light = (colour: string): number => {
    const part = (value = 0): number => (value <= 10 ? value / 3294 : ((value / 255 + 0.055) / 1.055) ** 2.4);
    const [red, green, blue] = parts(colour);
    return 0.2126 * part(red) + 0.7152 * part(green) + 0.0722 * part(blue);
  };
  const isSeen = (colour: string): boolean => /^rgb/.test(colour) && (parts(colour)[3] ?? 1) > 0;
  for (const letters of document.querySelectorAll<SVGTextElement>('svg text')) {
    if (!letters.checkVisibility({ visibilityProperty: true }) || letters.textContent!.trim() === '') continue;
    letters.scrollIntoView({ block: 'center', behavior: 'instant' });
    const { left, top, width, height } = letters.getBoundingClientRect();
    const under = document
      .elementsFromPoint(left + width / 2, top + height / 2)
      .filter((element) => element !== letters && !letters.contains(element) && !element.matches('text, tspan'));
    const paper =
      under
        .map((element) => {
          const style = getComputedStyle(element);
          return element instanceof SVGGeometryElement ? style.fill : style.backgroundColor;
        })
        .find(isSeen) ?? 'rgb(255, 255, 255)';
    const ink = getComputedStyle(letters).fill;
    const [dark, bright] = [light(ink), light(paper)].sort((a, b) => a - b) as [number, number];
    const ratio = (bright + 0.05) / (dark + 0.05);
    if (ratio < 7) faults.add(`"${letters.textContent!.trim().slice(0, 40)}" in ${ink} on ${paper} is ${ratio.toFixed(1)} to 1`);
  }
  return [...faults];
}
