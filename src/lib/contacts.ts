/*
 * Contacts by duty, and how they may be reached. The number of an office is printed. The number of a person is never in the clear: the
 * page's script shows it while the consent lasts, and nothing shows it afterwards.
 */
import { languageHere, spoken } from '../../shared/country/language-here.ts';
import { tongueOf } from '../../shared/country/language.ts';
import type { Club, Contact } from '../schemas/club.ts';
import * as en from './contacts.en.ts';
import * as es from './contacts.es.ts';

const text = () => spoken({ en, es });

/** Without a district: the contact for all districts, then that of the main district, then the first. */
export function contactFor(club: Pick<Club, 'contacts' | 'districts' | 'stands-in'>, duty: string): Contact | undefined {
  const heldDuty = club['stands-in']?.[duty] ?? duty;
  const held = club.contacts.filter((contact) => contact.duty === heldDuty);
  return held.find(({ district }) => district === undefined) ?? held.find(({ district }) => district === club.districts[0]!.id) ?? held[0];
}

export type Reached = {
  phone?: string | undefined;
  email?: string | undefined;
  web?: string | undefined;
  /** Its fragment on the page of contacts. */
  place: string;
  /** For a person: `2026-03-02 2026-08-31`, the first day of consent and the day on which it is over. */
  consent?: string | undefined;
  /** The consent was over on the edition's day, so the edition does not contain the number. */
  over?: true;
};

/** `edition` is the edition's day. */
export function reached(contact: Contact, edition: string): Reached {
  const { duty, district, phone, email, web, agreed, until } = contact;
  const place = district === undefined ? duty : `${duty}-${district}`;
  if (contact['public-office'] === true || agreed === undefined || until === undefined) return { phone, email, web, place };
  return edition < until ? { phone, email, web, place, consent: `${agreed} ${until}` } : { place, over: true };
}

type Lines = Pick<Club, 'emergency' | 'poison'>;

/** As words of a sentence: "call the poison line, 1-800-222-1222". */
export const lineNumber = (club: Lines, of: 'emergency' | 'poison'): string => club[of]?.number ?? text().noNumber;

/** Fields with `{emergency}` and `{poison}` filled in, in every text of theirs. */
export function withLines<T>(fields: T, club: Lines): T {
  if (typeof fields === 'string')
    return fields.replace(/\{(emergency|poison)\}/g, (_, of: 'emergency' | 'poison') => lineNumber(club, of)) as T;
  if (Array.isArray(fields)) return fields.map((each: unknown) => withLines(each, club)) as T;
  if (typeof fields !== 'object' || fields === null) return fields;
  return Object.fromEntries(Object.entries(fields).map(([key, value]) => [key, withLines(value, club)])) as T;
}

/** A contact's name in the middle of a sentence of the club's language: "the county extension office". */
export const inSentence = ({ name, 'said-in': said }: Pick<Contact, 'name' | 'said-in'>): string =>
  said?.[tongueOf(languageHere())] ?? text().inSentence(name);
