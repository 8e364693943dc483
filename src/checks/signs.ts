/* Checks signs: each is used, occurs once per bulletin, and reportable troubles can be found by their signs. */
import type { Diagnostic } from '../source/diagnostic.ts';
import type { Entry } from '../source/folder.ts';
import type { Bulletin } from '../schemas/bulletins.ts';
import type { ValidEntries, ValidEntry } from './fields.ts';
import { atField, atFieldName, isDraft } from './place.ts';

export function signFaults(club: ValidEntries): Diagnostic[] {
  return [
    ...unusedFaults(club),
    ...sameWords(club),
    ...club.of.bulletins.flatMap((entry) => [...twiceFaults(entry), ...nothingFor(entry)]),
    ...lawFaults(club),
  ];
}

function unusedFaults(club: ValidEntries): Diagnostic[] {
  const used = new Set(club.folder.entries.filter((entry) => entry.collection === 'bulletins' && !isDraft(entry)).flatMap(listedIn));
  return club.of.signs
    .filter((entry) => !isDraft(entry) && !used.has(entry.id) && entry.data.usually === undefined)
    .map((entry) =>
      atField(entry, ['title'], {
        rule: 'sign',
        field: 'the sign',
        found: 'a sign that no bulletin lists',
        write: `"- sign: ${entry.id}" under "signs:" of a bulletin, or a line "usually:" here with what it mostly is`,
      }),
    );
}

/** Covers bulletins with other faults too, so that one mistake is reported once. */
function listedIn(entry: Entry): unknown[] {
  const listed = (entry.fields.value as { signs?: unknown } | null | undefined)?.signs;
  return Array.isArray(listed) ? listed.map((each: unknown) => (each as { sign?: unknown } | null)?.sign) : [];
}

/** Two signs with the same words in one place cannot be told apart. */
function sameWords(club: ValidEntries): Diagnostic[] {
  const seen = new Map<string, string>();
  return club.of.signs.flatMap((entry) => {
    const words = `${entry.data.where} ${entry.data.title.toLowerCase()}`;
    const other = seen.get(words);
    seen.set(words, entry.id);
    return other === undefined
      ? []
      : [
          atField(entry, ['title'], {
            rule: 'sign',
            field: 'title',
            found: `the words of signs/${other}.yaml`,
            write: 'words of its own, or one file for both',
          }),
        ];
  });
}

function twiceFaults(entry: ValidEntry<Bulletin>): Diagnostic[] {
  const listed = entry.data.signs ?? [];
  return listed.flatMap(({ sign, strength, shows }, index) => {
    const first = listed.findIndex((other) => other.sign === sign);
    if (first === index) return [];
    const above = listed[first]!;
    const same = above.strength === strength && above.shows === shows;
    return [
      atField(entry, ['signs', index, 'sign'], {
        rule: 'sign',
        field: `signs ${index + 1}, sign`,
        write: 'each sign once, with one strength and one frequency',
        found: same
          ? `"${sign}" again, as in line ${first + 1}`
          : `"${sign}" as ${strength} and ${shows}, while line ${first + 1} has it ${above.strength} and ${above.shows}`,
      }),
    ];
  });
}

function nothingFor(entry: ValidEntry<Bulletin>): Diagnostic[] {
  const listed = entry.data.signs ?? [];
  if (listed.length === 0 || listed.some(({ shows }) => shows !== 'never')) return [];
  return [
    atFieldName(entry, ['signs'], { rule: 'sign', field: 'signs', found: 'only signs that never show', write: 'at least one that does' }),
  ];
}

/** A reader who starts from the signs must meet every reportable trouble, where the club has signs. */
function lawFaults(club: ValidEntries): Diagnostic[] {
  if (club.of.signs.length === 0) return [];
  return club.of.bulletins
    .filter((entry) => !isDraft(entry) && entry.data.status === 'law' && (entry.data.signs ?? []).length === 0)
    .map((entry) =>
      atField(entry, ['status'], {
        rule: 'sign',
        field: 'signs',
        found: '"law" and no signs, so that nobody meets it who starts from them',
        write: 'a list "signs:" with sign, strength and shows',
      }),
    );
}
