/*
 * Checks that the pages of a wide book say where they hold. An entry needs `for:` if it rests on a law, a label or a standard,
 * names a country or an agency, or has fixed months. Without it a club could print the law of another place.
 */
import type { Diagnostic } from '../source/diagnostic.ts';
import type { Entry } from '../source/folder.ts';
import { narrowness, type Where } from '../schemas/where.ts';
import { fieldName, type ValidEntry, type ValidEntries } from './fields.ts';
import { plainText } from '../source/prose.ts';
import { atField, atFieldName, atWords, isDraft, isPage, isWithdrawn } from './place.ts';

const BINDING = new Set(['law', 'label', 'standard']);
const WRITE = '"for:" with the place, such as US or US-OH, or "for: anywhere" where it holds all the same';

export function holdingFaults(club: ValidEntries): Diagnostic[] {
  const { book } = club.folder;
  const place = (book?.fields.value as { place?: Where } | undefined)?.place;
  if (typeof place !== 'string' || narrowness(place) > 1) return [];
  const own = (Object.values(club.of).flat() as ValidEntry<Held>[]).filter(
    (entry) => entry.book === undefined && !isDraft(entry) && !isWithdrawn(entry) && entry.data.for === undefined,
  );
  const binding = new Map(club.of.sources.filter(({ data }) => BINDING.has(data.kind)).map(({ id, data }) => [id, data.kind]));
  return own.flatMap((entry) => [
    ...sourceFaults(entry, binding),
    ...(place === 'anywhere' ? monthFaults(entry) : []),
    ...(NAMED_IN.has(entry.collection) ? nameFaults(entry) : []),
  ]);
}

type Row = { for?: unknown; source?: string };
type Held = { for?: unknown; kind?: string; sources?: string[]; rows?: Row[]; law?: Row[]; when?: string };

function sourceFaults(entry: ValidEntry<Held>, binding: ReadonlyMap<string, string>): Diagnostic[] {
  const { data } = entry;
  const at = (path: PropertyKey[], found: string): Diagnostic =>
    atField(entry, path, { rule: 'place', field: fieldName(path), found, write: WRITE });
  if (entry.collection === 'sources') return binding.has(entry.id) ? [at(['kind'], `a ${data.kind} without a place`)] : [];
  const rows = (['rows', 'law'] as const).flatMap((name) =>
    (Array.isArray(data[name]) ? data[name] : []).flatMap((row, index) => {
      if (row.for !== undefined) return [];
      if (name === 'law') return [at([name, index], 'a law without a place')];
      return row.source !== undefined && binding.has(row.source)
        ? [at([name, index, 'source'], `"${row.source}", a ${binding.get(row.source)}, in a row without a place`)]
        : [];
    }),
  );
  const named = (data.sources ?? []).flatMap((id, index) =>
    binding.has(id) ? [at(['sources', index], `"${id}", a ${binding.get(id)}, under a page without a place`)] : [],
  );
  return [...rows, ...named.slice(0, 1)];
}

const MONTHS = 'January|February|March|April|May|June|July|August|September|October|November|December';
const DATED = new RegExp(`\\b(?:${MONTHS})\\b`);

function monthFaults(entry: ValidEntry<Held>): Diagnostic[] {
  const { when } = entry.data;
  if (when === undefined || !DATED.test(when)) return [];
  return [
    atField(entry, ['when'], {
      rule: 'place',
      field: 'when',
      found: `"${when}", fixed months in a book of both halves of the world`,
      write: 'a part of the year, such as "in swarming", or "for: north"',
    }),
  ];
}

/** Pages whose words may name a place; figures and sources say theirs in fields. */
const NAMED_IN = new Set(['articles', 'bulletins', 'checklists', 'cautions']);

/** Names that Unicode's list of regions has not: parts of countries that have apiary laws of their own, and offices that make rules. */
const PARTS =
  'Alabama|Alaska|Arizona|Arkansas|California|Colorado|Connecticut|Delaware|Florida|Hawaii|Idaho|Illinois|Indiana|Iowa|Kansas|Kentucky|Louisiana|Maine|Maryland|Massachusetts|Michigan|Minnesota|Mississippi|Missouri|Montana|Nebraska|Nevada|New Hampshire|New Jersey|New Mexico|New York|North Carolina|North Dakota|Ohio|Oklahoma|Oregon|Pennsylvania|Rhode Island|South Carolina|South Dakota|Tennessee|Texas|Utah|Vermont|Virginia|Washington|West Virginia|Wisconsin|Wyoming|Ontario|Quebec|British Columbia|Alberta|Manitoba|Saskatchewan|Nova Scotia|England|Scotland|Wales|Northern Ireland|Britain|New South Wales|Queensland|Tasmania|South Australia|Western Australia';
const AGENCIES = 'EPA|USDA|FDA|OSHA|NIOSH|Defra|APHA|HSE|VMD|FSA|MPI|European Union|European Commission';
const NAMES = new RegExp(`\\b(?:${countries().join('|')}|${PARTS}|${AGENCIES})\\b`);

/** Names of the countries of ISO 3166-1, by Unicode's list of regions. A few are words of their own in lower case only, which do not count. */
function countries(): string[] {
  const names = new Intl.DisplayNames(['en'], { type: 'region', fallback: 'none' });
  const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];
  const all = letters.flatMap((one) => letters.flatMap((other) => names.of(one + other) ?? []));
  return [...new Set(all)]
    .filter((name) => /^[\p{Lu}][\p{L} ]+$/u.test(name) && !/Unknown|Pseudo|World/.test(name))
    .sort((a, b) => b.length - a.length);
}

/** The first name of a land, a state or an agency among the words of a page. */
function nameFaults(entry: ValidEntry<Held>): Diagnostic[] {
  const name = NAMES.exec(textOf(entry))?.[0];
  if (name === undefined) return [];
  const message = { rule: 'place', field: 'for', found: `"${name}" on a page without a place`, write: WRITE };
  return [isPage(entry) && entry.body.includes(name) ? atWords(entry, entry.tree, name, message) : atFieldName(entry, ['for'], message)];
}

function textOf(entry: Entry): string {
  const { title, summary, line, says } = (entry.fields.value ?? {}) as Record<string, unknown>;
  return [entry.tree ? plainText(entry.tree) : '', title, summary, line, ...(Array.isArray(says) ? says : [])]
    .filter((words) => typeof words === 'string')
    .join('\n');
}
