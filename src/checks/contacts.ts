/* Checks the contacts of club.yaml: no number of a person without consent, no duty twice for one place, and names for sentences. */
import type { Diagnostic } from '../source/diagnostic.ts';
import { tongueOf, tongues, type Tongue } from '../../shared/country/language.ts';
import type { Club, Contact } from '../schemas/club.ts';
import type { ValidEntries, ValidEntry } from './fields.ts';
import { nearOrAll } from '../../shared/words/near-name.ts';
import { notIn } from './suggestions.ts';
import { atField, type Message } from './place.ts';

export function contactFaults(club: ValidEntries): Diagnostic[] {
  const entry = club.club;
  if (!entry) return [];
  return [
    ...districtFaults(entry),
    ...sourceFaults(club, entry),
    ...placeholderFaults(entry),
    ...lawFaults(club, entry),
    ...entry.data.contacts.flatMap((contact, index) => [...consentFaults(entry, contact, index), ...twinFaults(entry, contact, index)]),
  ];
}

const at = (entry: ValidEntry, path: PropertyKey[], field: string, message: Omit<Message, 'rule' | 'field'>): Diagnostic =>
  atField(entry, path, { rule: 'contact', field, ...message });

function consentFaults(entry: ValidEntry, contact: Contact, index: number): Diagnostic[] {
  const name = `contacts ${index + 1}`;
  const { agreed, until } = contact;
  if (contact['public-office'] === true) return [];
  if (agreed === undefined && (contact.phone ?? contact.email) !== undefined) {
    return [
      at(entry, ['contacts', index, 'duty'], name, {
        found: `"${contact.duty}" with a number or address and no consent`,
        write: '"agreed:" with the day they agreed in writing, or "public-office: true"',
      }),
    ];
  }
  if (until !== undefined && (agreed === undefined || until <= agreed)) {
    return [
      at(entry, ['contacts', index, 'until'], `${name}, until`, {
        found: agreed === undefined ? `${until} without agreed` : `${until}, which is not after agreed, ${agreed}`,
        write: agreed === undefined ? 'a line "agreed:" as well' : 'a later day',
      }),
    ];
  }
  return [];
}

/** A consent that is over on the edition's day. The number is nowhere in the edition. */
export function consentHints({ club }: ValidEntries, edition: string): Diagnostic[] {
  return (club?.data.contacts ?? []).flatMap(({ until, duty, 'public-office': office }, index) =>
    until === undefined || office === true || edition < until
      ? []
      : [
          at(club!, ['contacts', index, 'until'], `contacts ${index + 1}, until`, {
            found: `${until}, and the edition is of ${edition}: the number of "${duty}" is shown nowhere`,
            write: 'the day until which they agreed in writing again, or leave the number out',
          }),
        ],
  );
}

/** Spanish puts an article before a name, which only the club knows. English takes "the". */
export function unsaidHints({ club }: ValidEntries): Diagnostic[] {
  if (!club) return [];
  const { contacts, language, 'also-in': also = [] } = club.data;
  const own = tongueOf(language);
  return tongues.flatMap((tongue) => {
    if (tongue === own ? tongue === 'en' : !also.includes(tongue)) return [];
    const lacking = contacts.flatMap((contact, index) => (contact['said-in']?.[tongue] === undefined ? [index] : []));
    if (lacking.length === 0) return [];
    const duties = lacking.map((index) => `"${contacts[index]!.duty}"`).join(', ');
    return [
      at(club, ['contacts', lacking[0]!, 'duty'], `contacts ${lacking[0]! + 1}`, {
        found: `no name for a sentence in ${SPOKEN[tongue]} of ${duties}`,
        write: `"said-in:" and below it "${tongue}:" with the name and its article, such as "${EXAMPLES[tongue]}"`,
      }),
    ];
  });
}

const SPOKEN: Readonly<Record<Tongue, string>> = { en: 'English', es: 'Spanish' };
const EXAMPLES: Readonly<Record<Tongue, string>> = { en: 'the county extension office', es: 'la oficina de extensión' };

function twinFaults(entry: ValidEntry<Club>, contact: Contact, index: number): Diagnostic[] {
  const first = entry.data.contacts.findIndex((other) => other.duty === contact.duty && other.district === contact.district);
  if (first === index) return [];
  return [
    at(entry, ['contacts', index, 'duty'], `contacts ${index + 1}, duty`, {
      found: `"${contact.duty}" again, as in contact ${first + 1}`,
      write: 'each duty once, or once a district',
    }),
  ];
}

/** Each district has its own name, the first is the main one, and a contact's district is one of them. */
function districtFaults(entry: ValidEntry<Club>): Diagnostic[] {
  const ids = entry.data.districts.map(({ id }) => id);
  const doubled = ids.flatMap((id, index) =>
    ids.indexOf(id) === index
      ? []
      : [at(entry, ['districts', index, 'id'], `districts ${index + 1}, id`, { found: `"${id}" again`, write: 'each district once' })],
  );
  const main = entry.data.districts[0]!['later-by-days'];
  const moved =
    main === 0
      ? []
      : [
          at(entry, ['districts', 0, 'later-by-days'], 'districts 1, later-by-days', {
            found: `${main}, and the first district is the main one`,
            write: '0',
          }),
        ];
  const strange = entry.data.contacts.flatMap(({ district }, index) =>
    district === undefined || ids.includes(district)
      ? []
      : [
          at(entry, ['contacts', index, 'district'], `contacts ${index + 1}, district`, {
            found: `"${district}", which is not among the districts`,
            write: nearOrAll(district, ids),
          }),
        ],
  );
  return [...doubled, ...moved, ...strange];
}

/** The published source of an emergency number must exist, because the page shows it. */
function sourceFaults(club: ValidEntries, entry: ValidEntry<Club>): Diagnostic[] {
  return (['emergency', 'poison'] as const).flatMap((line) => {
    const source = entry.data[line]?.source;
    if (source === undefined || club.ids.sources.has(source)) return [];
    return [atField(entry, [line, 'source'], { rule: 'reference', field: `${line}, source`, ...notIn(club, 'sources', source) })];
  });
}

/** Numbers reserved for fiction, and example addresses. They may occur only in a demonstration. */
const STORY_PHONE = /555[ -]?01\d\d$/;
const NOBODY = /[@./]example\.(?:org|com|net)\b/i;

export const isPlaceholder = (value: string): boolean => STORY_PHONE.test(value) || NOBODY.test(value);

function placeholderFaults(entry: ValidEntry<Club>): Diagnostic[] {
  if (entry.data.demonstration) return [];
  const write = 'the real one, or "demonstration: true"';
  const found = (value: string): string => `"${value}", a placeholder in a club that is no demonstration`;
  const contacts = entry.data.contacts.flatMap((contact, index) =>
    (['phone', 'email', 'web'] as const).flatMap((name): Diagnostic[] => {
      const value = contact[name];
      if (value === undefined || !isPlaceholder(value)) return [];
      return [at(entry, ['contacts', index, name], `contacts ${index + 1}, ${name}`, { found: found(value), write })];
    }),
  );
  return [
    ...(isPlaceholder(entry.data.mistakes) ? [at(entry, ['mistakes'], 'mistakes', { found: found(entry.data.mistakes), write })] : []),
    ...contacts,
  ];
}

/** Reports that the law requires go to an office, not to a member. */
function lawFaults(club: ValidEntries, entry: ValidEntry<Club>): Diagnostic[] {
  const offices = new Set(entry.data.contacts.filter((contact) => contact['public-office'] === true).map(({ duty }) => duty));
  const known = new Set(entry.data.contacts.map(({ duty }) => duty));
  return club.of.bulletins.flatMap((page) =>
    (page.data.law ?? []).flatMap(({ duty }, index) => {
      if (!known.has(duty) || offices.has(duty)) return [];
      return [
        atField(page, ['law', index, 'duty'], {
          rule: 'contact',
          field: `law ${index + 1}, duty`,
          found: `"${duty}", which is no public office in club.yaml`,
          write: offices.size > 0 ? `one of: ${[...offices].join(', ')}` : 'a duty whose contact has "public-office: true"',
        }),
      ];
    }),
  );
}
