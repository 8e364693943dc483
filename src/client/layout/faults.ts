/* Diagnostics in the preview: shows what checks find in the club's folder at the top of every page. */
export {};
const faults = (await (await fetch('/almanac-faults.json')).json()) as string[];
// A diagnostic of a draft stops no build. It is shown, because the preview shows the draft.
const stops = faults.filter((fault) => !fault.startsWith('draft: ')).length;
if (faults.length > 0) {
  const box = document.createElement('section');
  box.className = 'summary';
  box.append(
    Object.assign(document.createElement('h2'), {
      textContent:
        stops === 0
          ? 'Only drafts have blanks or faults; they are not published'
          : `${stops === 1 ? 'One fault' : `${stops} faults`} to correct before publishing`,
    }),
  );
  const list = box.appendChild(document.createElement('ul'));
  for (const fault of faults) list.append(Object.assign(document.createElement('li'), { textContent: fault }));
  document.querySelector('main')!.before(box);
}
