/*
 * Visual rules for every page, as functions that run inside the page and return faults in words. planted.slow.spec.ts shows that each
 * detects its fault.
 */

/** Nothing is wider than the window, so that nobody has to scroll sideways. */
export function sideways(): string[] {
  const room = document.documentElement.clientWidth;
  if (document.documentElement.scrollWidth <= room) return [];
  const inFrame = (element: Element): boolean => {
    for (let above = element.parentElement; above; above = above.parentElement)
      if (/auto|scroll|hidden/.test(getComputedStyle(above).overflowX)) return true;
    return false;
  };
  const wide = [...document.body.querySelectorAll('*')].filter(
    (element) => element.getBoundingClientRect().right > room + 0.5 && !inFrame(element),
  );
  const name = (element: Element): string =>
    `<${element.tagName.toLowerCase()}${element.className && typeof element.className === 'string' ? ` class="${element.className}"` : ''}> "${(element.textContent ?? '').trim().slice(0, 40)}"`;
  return [
    `${document.documentElement.scrollWidth} px wide in a window of ${room} px, by ${wide.slice(0, 3).map(name).join(', ') || 'something out of sight'}`,
  ];
}

/** No letters under 16 px, and under 14 px in the bar of the parts and in the tag of a demonstration. Letters in drawings count as drawn. */
export function smallText(): string[] {
  const faults = new Set<string>();
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const words = node.textContent!.trim();
    const element = node.parentElement!;
    if (words === '' || element.closest('script, style, title') || !element.checkVisibility({ visibilityProperty: true })) continue;
    if (element.closest('.visually-hidden')) continue;
    const size = Number.parseFloat(getComputedStyle(element).fontSize);
    const drawn = element instanceof SVGGraphicsElement ? size * (element.getScreenCTM()?.a ?? 1) : size;
    if (drawn < (element.closest('.bottom-nav, .demonstration, .ruler') ? 13.95 : 15.95))
      faults.add(`"${words.slice(0, 40)}" at ${Math.round(drawn * 10) / 10} px`);
  }
  return [...faults];
}

/**
 * Touch targets are at least 48 px high (buttons as wide, too), steps 64 px, and 96 px with gloves. A link inside a sentence may be as
 * high as its line.
 */
export function smallTargets(): string[] {
  const faults: string[] = [];
  const tap = document.documentElement.dataset.hands === 'gloves' ? 96 : 48;
  const row = document.documentElement.dataset.hands === 'gloves' ? 96 : 64;
  const name = (element: Element): string =>
    `<${element.tagName.toLowerCase()}> "${(element.textContent || element.getAttribute('aria-label') || '').trim().replace(/\s+/g, ' ').slice(0, 40)}"`;
  const isInSentence = (link: Element): boolean => {
    let block = link.parentElement!;
    while (getComputedStyle(block).display === 'inline') block = block.parentElement!;
    const rest = block.cloneNode(true) as HTMLElement;
    for (const other of rest.querySelectorAll('a, button, .visually-hidden, script, style')) other.remove();
    // Flex and grid children are rows of their own, not words of a sentence.
    const links = block.querySelectorAll('a').length;
    return (
      !/flex|grid/.test(getComputedStyle(block).display) &&
      (/\p{L}{2}|\b[ouy]\b/u.test(rest.textContent!) || (links > 1 && /[,;]/.test(rest.textContent!)))
    );
  };
  for (const element of document.querySelectorAll<HTMLElement>(
    'a[href], button, input, select, textarea, summary, label:has(input[type=checkbox], input[type=radio])',
  )) {
    // A source mark beside its number links to a row of full size.
    if (!element.checkVisibility({ visibilityProperty: true }) || element.closest('.skip, .visually-hidden, .mark, [aria-hidden=true]'))
      continue;
    // The whole row of a checkbox is its target.
    if (element.matches('label :is([type=checkbox], [type=radio])') || (element.matches('a:not(.button)') && isInSentence(element)))
      continue;
    // The label of a step covers its whole row.
    const step = element.matches('.step > label');
    const { width, height } = (step ? element.parentElement! : element).getBoundingClientRect();
    const least = step ? row : tap;
    if (height < least - 0.5) faults.push(`${name(element)} is ${Math.round(height)} px high, under ${least}`);
    else if (element.matches('button, .button') && width < tap - 0.5)
      faults.push(`${name(element)} is ${Math.round(width)} px wide, under ${tap}`);
  }
  return faults;
}

/** Letters have a contrast of 7 to 1 with their background. Letters in drawings have a rule of their own. */
export function paleText(): string[] {
  const faults = new Set<string>();
  const parts = (colour: string): number[] => (colour.match(/[\d.]+/g) ?? []).map(Number);
  const light = (colour: string): number => {
    const [red = 0, green = 0, blue = 0] = parts(colour);
    const part = (value: number): number => (value <= 10 ? value / 3294 : ((value / 255 + 0.055) / 1.055) ** 2.4);
    return 0.2126 * part(red) + 0.7152 * part(green) + 0.0722 * part(blue);
  };
  const ground = (element: Element): string => {
    for (let at: Element | null = element; at; at = at.parentElement) {
      const { backgroundColor } = getComputedStyle(at);
      if ((parts(backgroundColor)[3] ?? 1) > 0) return backgroundColor;
    }
    return getComputedStyle(document.documentElement).colorScheme === 'dark' ? 'rgb(0, 0, 0)' : 'rgb(255, 255, 255)';
  };
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const words = node.textContent!.trim();
    const element = node.parentElement!;
    if (words === '' || element.closest('script, style, svg, .visually-hidden') || !element.checkVisibility({ visibilityProperty: true }))
      continue;
    const [ink, paper] = [getComputedStyle(element).color, ground(element)];
    const [dark, bright] = [light(ink), light(paper)].sort((a, b) => a - b) as [number, number];
    const ratio = (bright + 0.05) / (dark + 0.05);
    if (ratio < 7) faults.add(`"${words.slice(0, 40)}" in ${ink} on ${paper} is ${ratio.toFixed(1)} to 1`);
  }
  return [...faults];
}

/** Without script there is a title and text, all five parts can be reached, and nothing waits for script. */
export function waitsForScript(): string[] {
  const faults: string[] = [];
  const visible = (element: Element): boolean => (element as HTMLElement).checkVisibility({ visibilityProperty: true });
  const title = document.querySelector('h1');
  if (!title || !visible(title) || title.textContent!.trim() === '') faults.push('no title');
  const main = document.querySelector<HTMLElement>('main');
  if (!main || main.innerText.trim().length < 120) faults.push(`${main?.innerText.trim().length ?? 0} letters of text`);
  const parts = [...document.querySelectorAll('nav[aria-label="Parts of the almanac"] a[href]')].filter(visible);
  if (parts.length !== 5) faults.push(`${parts.length} of five parts`);
  for (const button of document.querySelectorAll('button'))
    if (visible(button) && button.type !== 'submit') faults.push(`a button "${button.textContent!.trim()}" that does nothing`);
  // There are visible words between a heading and the next, unless the next is a subheading.
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT);
  let last: Element | null = null;
  let words = '';
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    if (node instanceof Element && node.matches('h1, h2, h3, footer')) {
      const deeper = last !== null && /^h\d$/i.test(node.tagName) && node.tagName > last.tagName;
      if (last && visible(last) && words === '' && !deeper) faults.push(`a heading "${last.textContent}" with nothing under it`);
      [last, words] = [node, ''];
    } else if (node instanceof Text && last && !last.contains(node) && visible(node.parentElement!)) words += node.data.trim();
  }
  return faults;
}

/**
 * In print: dark letters on white, empty boxes, no step or box cut in two, no navigation, nothing sticky, no total at the bottom of each
 * sheet.
 */
export function wrongOnPaper(): string[] {
  const faults = new Set<string>();
  const light = (colour: string): number => {
    const [red = 0, green = 0, blue = 0, alpha = 1] = (colour.match(/[\d.]+/g) ?? []).map(Number);
    if (alpha === 0) return 1;
    const part = (value: number): number => (value <= 10 ? value / 3294 : ((value / 255 + 0.055) / 1.055) ** 2.4);
    return 0.2126 * part(red) + 0.7152 * part(green) + 0.0722 * part(blue);
  };
  const behind = (element: Element): number => {
    for (let at: Element | null = element; at; at = at.parentElement) {
      const { backgroundColor } = getComputedStyle(at);
      if (!/, 0\)$|transparent/.test(backgroundColor)) return light(backgroundColor);
    }
    return 1;
  };
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const words = node.textContent!.trim();
    const element = node.parentElement!;
    if (words === '' || element.closest('script, style, title') || !element.checkVisibility({ visibilityProperty: true })) continue;
    const style = getComputedStyle(element);
    const ink = element instanceof SVGElement ? style.fill : style.color;
    if (light(ink) > 0.1) faults.add(`"${words.slice(0, 40)}" is printed in ${ink}`);
    if (!(element instanceof SVGElement) && behind(element) < 0.99) faults.add(`"${words.slice(0, 40)}" is printed on a dark ground`);
    if (Number.parseFloat(style.fontSize) < 12.5 && !(element instanceof SVGElement))
      faults.add(`"${words.slice(0, 40)}" is printed at ${style.fontSize}`);
  }
  for (const box of document.querySelectorAll<HTMLInputElement>('.step input')) {
    const style = getComputedStyle(box);
    if (!box.checkVisibility() || (style.backgroundImage === 'none') === box.checked || style.borderTopStyle === 'none')
      faults.add(
        `the box of "${box.closest('label')!.textContent!.trim().slice(0, 40)}" is not ${box.checked ? 'ticked' : 'an empty box'}`,
      );
  }
  for (const whole of document.querySelectorAll('.step, .box, tr'))
    if (getComputedStyle(whole).breakInside !== 'avoid')
      faults.add(`<${whole.tagName.toLowerCase()}> "${whole.textContent!.trim().slice(0, 30)}" may be cut in two`);
  for (const furniture of document.querySelectorAll<HTMLElement>('button, .bottom-nav, input[type=search]'))
    if (furniture.checkVisibility())
      faults.add(`<${furniture.tagName.toLowerCase()}> "${furniture.textContent!.trim().slice(0, 20)}" is printed`);
  for (const element of document.body.querySelectorAll<HTMLElement>('*')) {
    const { position, display } = getComputedStyle(element);
    const name = `<${element.tagName.toLowerCase()}> "${element.textContent!.trim().slice(0, 30)}"`;
    if (/sticky|fixed/.test(position) && element.checkVisibility()) faults.add(`${name} sticks to the sheet`);
    if (display === 'table-footer-group') faults.add(`${name} is repeated at the foot of each sheet`);
  }
  for (const shut of document.querySelectorAll<HTMLElement>('details:not([open])'))
    if (shut.checkVisibility() && [...shut.children].some((child) => !child.checkVisibility() && !child.matches('.no-print')))
      faults.add('a closed section is not printed');
  return [...faults];
}

/** Button texts over two lines. An address or a number may wrap. */
export function brokenWords(): string[] {
  const faults: string[] = [];
  for (const button of document.querySelectorAll<HTMLElement>('button, summary, .button')) {
    if (!button.checkVisibility({ visibilityProperty: true })) continue;
    const texts = document.createTreeWalker(button, NodeFilter.SHOW_TEXT);
    for (let text = texts.nextNode(); text; text = texts.nextNode()) {
      for (const { 0: word, index } of text.textContent!.matchAll(/(?<![\p{L}\d_@.])\p{L}+(?![\p{L}\d_@.])/gu)) {
        const range = document.createRange();
        range.setStart(text, index);
        range.setEnd(text, index + word.length);
        // WebKit adds an empty rectangle at the end of the line above.
        const drawn = [...range.getClientRects()].filter(({ width }) => width > 0);
        if (new Set(drawn.map(({ top }) => Math.round(top))).size > 1)
          faults.push(`"${word}" of "${button.textContent!.trim()}" is broken in two`);
      }
    }
  }
  // In a flex box each text and each element is a box of its own, and the space between them is lost where the box has no gap.
  for (const button of document.querySelectorAll<HTMLElement>('button, summary, a')) {
    const { display, columnGap } = getComputedStyle(button);
    if (!display.endsWith('flex') || columnGap !== 'normal') continue;
    for (const node of button.childNodes)
      if (
        node instanceof Text &&
        node.data.trim() &&
        ((node.nextSibling && /\s$/.test(node.data)) || (node.previousSibling && /^\s/.test(node.data)))
      )
        faults.push(`"${button.textContent!.trim()}" falls apart at "${node.data.trim()}"`);
  }
  return faults;
}
