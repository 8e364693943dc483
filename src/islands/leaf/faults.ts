/* In the preview only: what checks find in the club's folder stands at the head of every page. */
export {};
const faults = (await (await fetch('/almanac-faults.json')).json()) as string[];
if (faults.length > 0) {
  const box = document.createElement('section');
  box.className = 'summary';
  box.append(
    Object.assign(document.createElement('h2'), {
      textContent: `${faults.length === 1 ? 'One fault' : `${faults.length} faults`} to mend before publishing`,
    }),
  );
  const list = box.appendChild(document.createElement('ul'));
  for (const fault of faults) list.append(Object.assign(document.createElement('li'), { textContent: fault }));
  document.querySelector('main')!.before(box);
}
