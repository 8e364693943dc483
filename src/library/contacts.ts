/* Which contact a duty means where no district is known: the one for all districts, else the main district's, else the first. */
import type { Club, Contact } from '../schemas/club.ts';

export function contactFor(club: Pick<Club, 'contacts' | 'districts'>, duty: string): Contact | undefined {
  const held = club.contacts.filter((contact) => contact.duty === duty);
  return held.find(({ district }) => district === undefined) ?? held.find(({ district }) => district === club.districts[0]!.id) ?? held[0];
}
