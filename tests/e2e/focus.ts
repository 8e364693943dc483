/* Visible focus for keyboard users: where the focus is, completely, in both directions. Runs inside the page. */

/**
 * Goes through everything that a keyboard reaches, forward and, where something is sticky above the text, backward too. Each has a focus
 * indicator with a contrast of 3 to 1, and no part of it is below a sticky element. WCAG 2.2: 2.4.7, 2.4.11, 2.4.12, 2.4.13.
 */
export function hiddenFocus(): string[] {
  const faults = new Set<string>();
  const name = (element: Element): string =>
    `<${element.tagName.toLowerCase()}> "${(element.textContent || element.getAttribute('aria-label') || element.id).trim().replace(/\s+/g, ' ').slice(0, 40)}"`;
  const parts = (colour: string): number[] => (colour.match(/[\d.]+/g) ?? []).map(Number);
  const light = (colour: string): number => {
    const part = (value = 0): number => (value <= 10 ? value / 3294 : ((value / 255 + 0.055) / 1.055) ** 2.4);
    const [red, green, blue] = parts(colour);
    return 0.2126 * part(red) + 0.7152 * part(green) + 0.0722 * part(blue);
  };
  const ground = (element: Element | null): string => {
    for (let at = element; at; at = at.parentElement)
      if ((parts(getComputedStyle(at).backgroundColor)[3] ?? 1) > 0) return getComputedStyle(at).backgroundColor;
    return getComputedStyle(document.documentElement).colorScheme === 'dark' ? 'rgb(0, 0, 0)' : 'rgb(255, 255, 255)';
  };
  const staying = [...document.body.querySelectorAll<HTMLElement>('*')].filter((element) =>
    /fixed|sticky/.test(getComputedStyle(element).position),
  );
  const reachable = [...document.querySelectorAll<HTMLElement>('a[href], button, input, select, textarea, summary, [tabindex]')].filter(
    (element) => element.tabIndex >= 0 && !element.matches(':disabled') && element.checkVisibility({ visibilityProperty: true }),
  );
  const staysAbove = staying.some((layer) => getComputedStyle(layer).position === 'sticky' && getComputedStyle(layer).top === '0px');
  for (const element of staysAbove ? [...reachable, ...reachable.toReversed()] : reachable) {
    if (element.tabIndex > 0) faults.add(`${name(element)} has a place of its own in the order of the Tab key`);
    element.focus({ focusVisible: true } as FocusOptions);
    if (document.activeElement !== element) {
      faults.add(`${name(element)} takes no focus`);
      continue;
    }
    // The label of a drawn choice shows the focus of its radio button, which nobody sees.
    const drawn = getComputedStyle(element).opacity === '0' ? element.closest('label')! : element;
    const style = getComputedStyle(drawn);
    if (style.outlineStyle === 'none' || Number.parseFloat(style.outlineWidth) < 2) faults.add(`${name(element)} does not show its focus`);
    const around = ground(Number.parseFloat(style.outlineOffset) < 0 ? drawn : drawn.parentElement);
    const [dark, bright] = [light(style.outlineColor), light(around)].sort((one, other) => one - other) as [number, number];
    if ((bright + 0.05) / (dark + 0.05) < 3) faults.add(`${name(element)} shows its focus in ${style.outlineColor} on ${around}`);
    const box = [...element.getClientRects()].find((each) => each.width > 0 && each.height > 0);
    if (!box) {
      faults.add(`${name(element)} is focused and has no size`);
      continue;
    }
    // The part of it inside the window, because a frame may be taller.
    const shown = {
      left: Math.max(box.left, 0),
      top: Math.max(box.top, 0),
      right: Math.min(box.right, innerWidth),
      bottom: Math.min(box.bottom, innerHeight),
    };
    if (shown.right - shown.left < 4 || shown.bottom - shown.top < 4) {
      faults.add(`${name(element)} is focused out of sight`);
      continue;
    }
    for (const layer of staying) {
      if (layer.contains(element) || element.contains(layer)) continue;
      const over = layer.getBoundingClientRect();
      const both = {
        left: Math.max(shown.left, over.left),
        top: Math.max(shown.top, over.top),
        right: Math.min(shown.right, over.right),
        bottom: Math.min(shown.bottom, over.bottom),
      };
      if (both.right - both.left < 2 || both.bottom - both.top < 2) continue;
      const above = document.elementFromPoint((both.left + both.right) / 2, (both.top + both.bottom) / 2);
      if (!layer.contains(above)) continue;
      // An element taller than the free space is partly covered anyway. Then half of the space must show it.
      const { scrollPaddingTop, scrollPaddingBottom } = getComputedStyle(document.documentElement);
      const padding = (Number.parseFloat(scrollPaddingTop) || 0) + (Number.parseFloat(scrollPaddingBottom) || 0);
      const layers = staying.map((each) => each.getBoundingClientRect()).filter((each) => each.width >= innerWidth * 0.8);
      const free =
        innerHeight -
        Math.max(
          padding,
          layers.reduce((sum, each) => sum + each.height, 0),
        );
      if (box.height > free && shown.bottom - shown.top - (both.bottom - both.top) > free / 2) continue;
      faults.add(`${name(element)} is focused under ${name(layer)}`);
    }
  }
  return [...faults];
}
