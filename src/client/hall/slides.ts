/*
 * A page in the hall, one part after the other: a step of a checklist, or a section of a page. A slide is only what is shown of the page.
 * Nothing is copied, so what stands on the wall is what stands on the page.
 */
export type Slide = {
  /** Siblings that are shown together. */
  readonly nodes: readonly Element[];
};

const PART = '.part-of-page, .do-now, details';
/** What is only for a reader with the page in her hands. */
const BY_HAND = '.no-print, .print-only, [hidden], script, style, template, .quiet, .page-days';

/** The slides of a page's text, in reading order. A page with one part only has one slide. */
export function slidesOf(text: Element): Slide[] {
  const slides: Slide[] = [];
  let loose: Element[] = [];
  const flush = (): void => {
    if (loose.some((node) => node.textContent.trim())) slides.push({ nodes: loose });
    loose = [];
  };
  for (const node of text.children) {
    if (node.matches(BY_HAND)) continue;
    const steps = [...node.querySelectorAll('.step')];
    if (!node.matches(PART) && !node.querySelector(PART)) loose.push(node);
    else {
      flush();
      if (!node.matches(PART)) slides.push(...slidesOf(node));
      else if (steps.length === 0) slides.push({ nodes: [node] });
      else slides.push(...slidesOfSteps(node, steps));
    }
  }
  flush();
  return slides;
}

/** What stands in a part above its first step is shown with it. */
function slidesOfSteps(part: Element, steps: readonly Element[]): Slide[] {
  const before = [...part.children].filter((node) => !node.matches(`summary, ${BY_HAND}`) && !node.querySelector('.step'));
  const intro = before.filter((node) => node.compareDocumentPosition(steps[0]!) & Node.DOCUMENT_POSITION_FOLLOWING);
  return [...(intro.length > 0 ? [{ nodes: intro }] : []), ...steps.map((step) => ({ nodes: [step] }))];
}

const AWAY = 'hall-away';
let opened: HTMLDetailsElement[] = [];

/** Shows one slide of the text, with the heading of its part. What it opens is closed again by the next. */
export function showSlide(text: Element, { nodes }: Slide): void {
  showAll(text);
  for (const node of nodes) if (node instanceof HTMLDetailsElement) open(node);
  let shown: readonly Element[] = nodes;
  for (let place = nodes[0]!.parentElement!; ; place = place.parentElement!) {
    if (place instanceof HTMLDetailsElement) open(place);
    for (const child of place.children) if (!shown.includes(child) && child.tagName !== 'SUMMARY') child.classList.add(AWAY);
    if (place === text) return;
    shown = [place];
  }
}

/** The page as it is outside the hall. */
export function showAll(text: Element): void {
  for (const node of text.querySelectorAll(`.${AWAY}`)) node.classList.remove(AWAY);
  for (const fold of opened) fold.open = false;
  opened = [];
}

function open(fold: HTMLDetailsElement): void {
  if (fold.open) return;
  fold.open = true;
  opened.push(fold);
}

/** The slide that holds an element, such as the target of a link. -1 where none does. */
export const slideOf = (slides: readonly Slide[], element: Element | null): number =>
  element ? slides.findIndex(({ nodes }) => nodes.some((node) => node.contains(element) || element.contains(node))) : -1;
