/* Words of a step for files and sentences: what it says, and why. Source marks and links to further cases are left out. */
function plain(element: Element): string {
  const copy = element.cloneNode(true) as Element;
  for (const mark of copy.querySelectorAll('.mark, details, button')) mark.remove();
  return copy
    .textContent!.replace(/\s+/g, ' ')
    .replace(/ ([.,;])/g, '$1')
    .trim();
}

export const plainWords = (step: Element): string => plain(step.querySelector('.step-words')!);

/** The paragraphs of its reason. One that only leads to another place says nothing in a calendar. */
export const whyOf = (step: Element): string =>
  [...step.querySelectorAll('.reason > p')]
    .filter((paragraph) => [...paragraph.childNodes].some((node) => node.nodeName !== 'A' && /\p{L}/u.test(node.textContent!)))
    .map(plain)
    .filter(Boolean)
    .join('\n');
