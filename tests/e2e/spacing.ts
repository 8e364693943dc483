/* Readability rules that run inside the page: no text cut off, overlapping or missing. */
import type { Page } from '@playwright/test';

/** The text spacing of WCAG 2.2, 1.4.12, as a reader's own style sheet applies it. Scripts that read a style see it too. */
export async function widen(page: Page): Promise<void> {
  await page.evaluate(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(
      '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-bottom: 2em !important }',
    );
    document.adoptedStyleSheets.push(sheet);
  });
}

/**
 * No line of text is clipped by a frame, reaches out of the window, or overlaps a line of another block. Drawings are left out, because
 * their text is beside them.
 */
export function cutText(): string[] {
  const faults = new Set<string>();
  const lines: { words: string; block: Element; layer: Element | null; box: DOMRect }[] = [];
  const isInline = (element: Element): boolean =>
    getComputedStyle(element).display.startsWith('inline') && !getComputedStyle(element).display.includes('-');
  const isHeardOnly = (element: Element): boolean => {
    for (let at: Element | null = element; at; at = at.parentElement) if (getComputedStyle(at).clipPath === 'inset(50%)') return true;
    return false;
  };
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const words = node.textContent!.trim();
    const element = node.parentElement!;
    if (
      words === '' ||
      element.closest('script, style, title, svg, option, sup, .skip') ||
      !element.checkVisibility({ visibilityProperty: true }) ||
      isHeardOnly(element)
    )
      continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    let block: Element = element;
    while (isInline(block)) block = block.parentElement!;
    let layer: Element | null = element;
    while (layer && !/fixed|sticky/.test(getComputedStyle(layer).position)) layer = layer.parentElement;
    const frames: { element: Element; scrolls: boolean }[] = [];
    for (let at: Element | null = element; at && at !== document.documentElement; at = at.parentElement) {
      const { overflowX } = getComputedStyle(at);
      if (overflowX !== 'visible') frames.push({ element: at, scrolls: /auto|scroll/.test(overflowX) });
    }
    for (const box of range.getClientRects()) {
      if (box.width < 1 || box.height < 1) continue;
      const told = `"${words.slice(0, 40)}"`;
      const free = frames.find(({ scrolls }) => scrolls);
      for (const { element: frame, scrolls } of frames) {
        const held = frame.getBoundingClientRect();
        if (!scrolls && (box.left < held.left - 1 || box.right > held.right + 1 || box.top < held.top - 1 || box.bottom > held.bottom + 1))
          faults.add(`${told} is cut by <${frame.tagName.toLowerCase()} class="${frame.getAttribute('class') ?? ''}">`);
      }
      if (!free && (box.left < -1 || box.right > document.documentElement.clientWidth + 1)) faults.add(`${told} reaches out of the window`);
      lines.push({ words: told, block, layer, box });
    }
  }
  lines.sort((one, other) => one.box.top - other.box.top);
  for (const [at, { words, block, layer, box }] of lines.entries()) {
    for (let next = at + 1; next < lines.length && lines[next]!.box.top < box.bottom - 3; next += 1) {
      const other = lines[next]!;
      if (other.layer !== layer || other.block === block || other.block.contains(block) || block.contains(other.block)) continue;
      if (Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left) > 3) faults.add(`${words} lies over ${other.words}`);
    }
  }
  return [...faults];
}

/** The visible words with their counts, and the names of drawings. */
export function wordsSeen(): string[] {
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const seen: string[] = [];
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const element = node.parentElement!;
    if (element.closest('script, style, svg, .visually-hidden, .skip') || !element.checkVisibility({ visibilityProperty: true })) continue;
    seen.push(...node.textContent!.split(/\s+/).filter(Boolean));
  }
  return seen;
}

/** Nothing moves: no animation, no transition, no smooth scrolling. WCAG 2.2: 2.2.2, 2.3.3. */
export function moving(): string[] {
  const faults = new Set<string>();
  for (const element of document.querySelectorAll('*')) {
    const { animationName, transitionDuration, scrollBehavior } = getComputedStyle(element);
    const name = `<${element.tagName.toLowerCase()}>`;
    if (animationName !== 'none') faults.add(`${name} has the animation ${animationName}`);
    if (/[1-9]/.test(transitionDuration)) faults.add(`${name} changes by and by in ${transitionDuration}`);
    if (scrollBehavior !== 'auto') faults.add(`${name} scrolls by gliding`);
    if (element.matches('marquee, blink, video, audio, canvas, animate, animateTransform, set, img[src$=".gif"]'))
      faults.add(`${name} moves`);
  }
  return [...faults, ...document.getAnimations().map(() => 'an animation runs')];
}
