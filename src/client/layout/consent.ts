/*
 * Shows a person's number from the first day of her consent until its last, decided when the page is read or becomes visible. At all
 * other times a link says where to ask, or nothing is shown.
 */
export function showNumbers(today: string, within: ParentNode = document): void {
  for (const link of within.querySelectorAll<HTMLAnchorElement>('[data-reach]')) {
    const { reach, reachTo, reachWords, on } = link.dataset;
    const shows = reach!.slice(0, 10) <= today && today < reach!.slice(11);
    if (shows === !!on) continue;
    link.dataset.on = shows ? 'on' : '';
    link.dataset.reachTo = link.href;
    link.dataset.reachWords = link.textContent;
    link.href = reachTo!;
    link.textContent = reachWords!;
  }
}
