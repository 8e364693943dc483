/*
 * Which contact a duty means, and how it may be reached. An office's number is printed. A number that a person gave until a
 * day never stands in the clear: the page's script shows it while the consent lasts, and from that day on nothing does.
 */
import type { Club, Contact } from '../schemas/club.ts';

/** Where no district is known: the one for all districts, else the main district's, else the first. */
export function contactFor(club: Pick<Club, 'contacts' | 'districts'>, duty: string): Contact | undefined {
  const held = club.contacts.filter((contact) => contact.duty === duty);
  return held.find(({ district }) => district === undefined) ?? held.find(({ district }) => district === club.districts[0]!.id) ?? held[0];
}

export type Reached = {
  phone?: string | undefined;
  email?: string | undefined;
  web?: string | undefined;
  /** Its name on the page of contacts. */
  place: string;
  /** Of a person: `2026-03-02 2026-08-31`, the first day of consent and the day from which it is over. */
  consent?: string | undefined;
  /** The consent was over when this edition was made: the number is not in it at all. */
  over?: true;
};

/** `edition` is the edition's day. */
export function reached(contact: Contact, edition: string): Reached {
  const { duty, district, phone, email, web, agreed, until } = contact;
  const place = district === undefined ? duty : `${duty}-${district}`;
  if (contact['public-office'] === true || agreed === undefined || until === undefined) return { phone, email, web, place };
  return edition < until ? { phone, email, web, place, consent: `${agreed} ${until}` } : { place, over: true };
}

/** A contact's name in the middle of a sentence: "the county extension office". */
export const inSentence = (name: string): string =>
  `the ${name.replace(/^[A-Z](?=[a-z])/, (letter) => letter.toLowerCase())}`.replace(/^the (the|your) /, '$1 ');
