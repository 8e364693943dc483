/* Fills the blanks of a new file, like a person who reads the remark above each. */

/** Values for blanks by the name of the field above them. A list's blank item takes its list's. */
export const USUAL: Readonly<Record<string, string>> = {
  summary: 'One sentence.',
  why: 'The reason.',
  when: 'any time',
  checked: '2026-03-03',
  'next-check': '2026-12-01',
  by: 'education officer',
  ask: 'mentor',
  yard: 'false',
  sources: 'leaflet',
  source: 'leaflet',
  certainty: 'likely',
  place: 'Ohio',
};

/** The text with every blank filled. Throws where `values` has nothing for one. */
export function filled(text: string, values: Readonly<Record<string, string>> = {}): string {
  let list = '';
  return text
    .split('\n')
    .map((line) => {
      const [, indent, name] = /^(\s*(?:- )?)([a-z][a-z0-9-]*):$/.exec(line) ?? [];
      if (name !== undefined) list = name;
      // A blank name above an item or a section contains what follows.
      if (name !== undefined && !holdsMore(text, line)) return `${indent}${name}: ${valueFor(name, values)}`;
      return /^ +-$/.test(line) ? `${line} ${valueFor(list, values)}` : line;
    })
    .join('\n');
}

function holdsMore(text: string, line: string): boolean {
  const below =
    text
      .slice(text.indexOf(`\n${line}\n`) + line.length + 2)
      .split('\n')
      .find((each) => !/^\s*#/.test(each)) ?? '';
  return /^ /.test(below) && below.search(/\S/) > line.search(/[a-z]/) - (/^\s*- /.test(line) ? 99 : 0) && !/^\s*- /.test(line);
}

function valueFor(name: string, values: Readonly<Record<string, string>>): string {
  const value = values[name] ?? USUAL[name];
  if (value === undefined) throw new Error(`nothing to fill "${name}:" with`);
  return value;
}
