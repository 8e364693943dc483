/*
 * The number of a person is shown from the day she agreed until the day on which her consent ends, decided when the page is
 * read or looked at again. At all other times a link says where to ask.
 */
export function showNumbers(today: string): void {
  for (const link of document.querySelectorAll<HTMLAnchorElement>('a[data-reach]')) {
    const [from, until] = link.dataset.reach!.split(' ') as [string, string];
    const shows = from <= today && today < until;
    if (shows === (link.dataset.reached === '')) continue;
    const { reachTo, reachWords } = link.dataset;
    link.dataset.reachTo = link.getAttribute('href') ?? '';
    link.dataset.reachWords = link.textContent;
    link.setAttribute('href', reachTo!);
    link.textContent = reachWords!;
    link.hidden = reachWords === '';
    link.toggleAttribute('data-reached', shows);
  }
}
