/*
 * Checks that a club, or the book of a land, prints no law of another land as its own. A law, a label or a standard of another
 * land needs `for:`, and so does what rests on it. A page of a book that names a part or an office of another land needs `for:` too.
 * In a club that is a hint.
 */
import { holdsHere, narrowness, type For, type Where } from '../schemas/where.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import type { Entry } from '../source/folder.ts';
import { attribute, isTag, walk } from '../source/prose.ts';
import { followedRows } from '../schemas/figures.ts';
import { fieldName, type ValidEntry, type ValidEntries } from './fields.ts';
import { BINDING, nameFaults, unplaced, type Held } from './holding.ts';
import { foreignLand, foreignPart } from './land-names.ts';
import { atField, atNode, isPage } from './place.ts';

export function elsewhereFaults(club: ValidEntries): Diagnostic[] {
  const place = landOf(club);
  if (place === null) return [];
  const own = unplaced(club);
  return [
    ...own.flatMap((entry) => bindingFaults(entry, place)),
    ...(club.folder.here ? [...citedFaults(club, own), ...rowFaults(club)] : own.flatMap((entry) => foreignNames(entry, place))),
  ];
}

/** A club may have reasons to name the offices of another land. */
export function elsewhereHints(club: ValidEntries): Diagnostic[] {
  const { here } = club.folder;
  return here === null ? [] : unplaced(club).flatMap((entry) => foreignNames(entry, here.land));
}

const foreignNames = (entry: ValidEntry<Held>, place: Where): Diagnostic[] => nameFaults(entry, (text) => foreignPart(text, place));

/** The land of the club, or the place of the book of a land. */
function landOf({ folder: { book, here } }: ValidEntries): Where | null {
  if (!book) return here?.land ?? null;
  const { place } = (book.fields.value ?? {}) as { place?: unknown };
  return typeof place === 'string' && narrowness(place) > 1 ? place : null;
}

function bindingFaults(entry: ValidEntry<Held>, place: Where): Diagnostic[] {
  const { kind = '', who, title, where } = entry.data;
  if (entry.collection !== 'sources' || !BINDING.has(kind)) return [];
  const name = foreignLand([who, title, where].filter((words) => words !== undefined).join('\n'), place);
  if (name === null) return [];
  const said = { found: `a ${kind} that names "${name}", where ${place} is meant`, write: '"for:" with the place where it holds' };
  return [atField(entry, ['kind'], { rule: 'place', field: 'kind', ...said })];
}

/** Own sources that hold elsewhere, in what is shown here. */
function citedFaults({ folder }: ValidEntries, own: readonly ValidEntry<Held>[]): Diagnostic[] {
  const isElsewhere = (id: string): boolean => {
    const places = forOf(folder.parsed.get(`sources/${id}.yaml`)?.entry);
    return places !== undefined && !holdsHere(places, folder.here!);
  };
  return own.flatMap((entry) => {
    const rows = (['rows', 'law'] as const).flatMap((name) =>
      (Array.isArray(entry.data[name]) ? entry.data[name] : []).flatMap(({ for: places, source }, index): [PropertyKey[], string][] =>
        places === undefined && source !== undefined ? [[[name, index, 'source'], source]] : [],
      ),
    );
    const named = (entry.data.sources ?? []).map((id, index): [PropertyKey[], string] => [['sources', index], id]);
    return [...named, ...rows]
      .filter(([, id]) => isElsewhere(id))
      .map(([path, id]) =>
        atField(entry, path, {
          rule: 'place',
          field: fieldName(path),
          found: `"${id}", a source that does not hold here`,
          write: 'a source that does, or "for:" here too, with the place of the source',
        }),
      );
  });
}

const forOf = (entry: Entry | null | undefined): For | undefined => (entry?.fields.value as { for?: For } | null | undefined)?.for;

/** A figure in the club's own words of which no row holds here. A sentence of a book would be left out. */
function rowFaults({ folder: { here, entries }, of }: ValidEntries): Diagnostic[] {
  const figures = new Map(of.figures.map(({ id, data }) => [id, data]));
  return entries.filter(isPage).flatMap((page) =>
    [...walk(page.tree)].flatMap((node) => {
      const figure = isTag(node) && node.name === 'Figure' ? figures.get(attribute(node, 'id') ?? '') : undefined;
      if (!isTag(node) || !figure) return [];
      const row = attribute(node, 'row');
      const named = row === undefined ? followedRows(figure) : [row];
      const rows = figure.rows.filter(({ id }) => named.includes(id));
      if (rows.length === 0 || rows.some((each) => holdsHere(each.for ?? 'anywhere', here!))) return [];
      return [
        atNode(page, node, {
          rule: 'place',
          field: 'Figure',
          found: `"${attribute(node, 'id')}", a figure without a row that holds here`,
          write: 'a row of your own for it, or no figure',
        }),
      ];
    }),
  );
}
