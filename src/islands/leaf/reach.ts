/*
 * The number of a person is shown from the day she agreed until the day on which her consent ends, decided when the page is
 * read or looked at again. At all other times a link says where to ask.
 */
export function showNumbers(today: string): void {
  for (const link of document.querySelectorAll<HTMLAnchorElement>('a[data-reach]')) {
    const [from, until] = link.dataset.reach!.split(' ') as [string, string];
    const shows = from <= today && today < until;
    if (shows === (link.dataset.shown === '')) continue;
    const { to, words } = link.dataset;
    link.dataset.to = link.getAttribute('href') ?? '';
    link.dataset.words = link.textContent;
    link.setAttribute('href', to!);
    link.textContent = words!;
    link.hidden = words === '';
    link.toggleAttribute('data-shown', shows);
  }
}
