/* club.yaml: whom members may ring. Nobody's number is printed without consent, and no duty is listed twice for one place. */
import type { Fault } from '../reader/fault.ts';
import type { Club, Contact } from '../schemas/club.ts';
import type { Sound, SoundEntry } from './fields.ts';
import { nearest } from './nearest.ts';
import { atField, type Said } from './place.ts';

export function contactFaults(club: Sound): Fault[] {
  const entry = club.club;
  if (!entry) return [];
  return [...districtFaults(entry), ...sourceFaults(club, entry), ...entry.data.contacts.flatMap((contact, index) => [
    ...consentFaults(entry, contact, index),
    ...twinFaults(entry, contact, index),
  ])];
}

const at = (entry: SoundEntry, path: PropertyKey[], field: string, said: Omit<Said, 'rule' | 'field'>): Fault => atField(entry, path, { rule: 'contact', field, ...said });

function consentFaults(entry: SoundEntry, contact: Contact, index: number): Fault[] {
  const name = `contacts ${index + 1}`;
  const { agreed, until } = contact;
  if (contact['public-office'] === true) return [];
  if (agreed === undefined && (contact.phone ?? contact.email) !== undefined) {
    return [at(entry, ['contacts', index, 'duty'], name, { found: `"${contact.duty}" with a number or address and no consent`, write: '"agreed:" with the day they agreed in writing, or "public-office: true"' })];
  }
  if (until !== undefined && (agreed === undefined || until <= agreed)) {
    return [at(entry, ['contacts', index, 'until'], `${name}, until`, { found: agreed === undefined ? `${until} without agreed` : `${until}, which is not after agreed, ${agreed}`, write: agreed === undefined ? 'a line "agreed:" as well' : 'a later day' })];
  }
  return [];
}

function twinFaults(entry: SoundEntry<Club>, contact: Contact, index: number): Fault[] {
  const first = entry.data.contacts.findIndex((other) => other.duty === contact.duty && other.district === contact.district);
  if (first === index) return [];
  return [at(entry, ['contacts', index, 'duty'], `contacts ${index + 1}, duty`, { found: `"${contact.duty}" again, as in contact ${first + 1}`, write: 'each duty once, or once a district' })];
}

/** Districts have a name each, the first is the main one, and a contact's district is one of them. */
function districtFaults(entry: SoundEntry<Club>): Fault[] {
  const ids = entry.data.districts.map(({ id }) => id);
  const doubled = ids.flatMap((id, index) => (ids.indexOf(id) === index ? [] : [at(entry, ['districts', index, 'id'], `districts ${index + 1}, id`, { found: `"${id}" again`, write: 'each district once' })]));
  const main = entry.data.districts[0]!['later-by-days'];
  const moved = main === 0 ? [] : [at(entry, ['districts', 0, 'later-by-days'], 'districts 1, later-by-days', { found: `${main}, and the first district is the main one`, write: '0' })];
  const strange = entry.data.contacts.flatMap(({ district }, index) => (district === undefined || ids.includes(district) ? [] : [
    at(entry, ['contacts', index, 'district'], `contacts ${index + 1}, district`, { found: `"${district}", which is not among the districts`, write: `"${nearest(district, ids) ?? ids.join('", "')}"` }),
  ]));
  return [...doubled, ...moved, ...strange];
}

/** The published source of an emergency number must be there to be shown. */
function sourceFaults(club: Sound, entry: SoundEntry<Club>): Fault[] {
  return (['emergency', 'poison'] as const).flatMap((line) => {
    const source = entry.data[line]?.source;
    if (source === undefined || club.ids.sources.has(source)) return [];
    const near = nearest(source, club.ids.sources);
    return [atField(entry, [line, 'source'], { rule: 'reference', field: `${line}, source`, found: `"${source}", which is not in sources/`, write: near ? `"${near}"` : 'the name of a file in sources/' })];
  });
}
