/* Pages in more than one language: their addresses, the language of their texts, and what readers are told of a translation. */
import { tongueOf, type Language, type Tongue } from '../../shared/country/language.ts';
import { formatDay } from '../../shared/days/show-day.ts';
import { collectionNames, collections } from '../schemas/collections.ts';
import type { Almanac } from './almanac.ts';

/** What readers of each language are told. The frame of a page is in the club's language, so these words are here in all of them. */
const WORDS = {
  en: {
    offered: 'In English',
    here: 'This page in English',
    unchecked: 'Translated, not yet checked by a speaker who keeps bees.',
    checked: (day: string) => `Translation checked ${day} by a speaker who keeps bees.`,
    isOlder: 'The original has changed since it was translated.',
    untranslated: (other: string) => `This page is not translated yet. It is in ${other}.`,
    names: { en: 'English', es: 'Spanish' },
  },
  es: {
    offered: 'En español',
    here: 'Esta página en español',
    unchecked: 'Traducción que todavía no ha revisado un hablante de español que tenga abejas.',
    checked: (day: string) => `Traducción revisada el ${day} por un hablante de español que tiene abejas.`,
    isOlder: 'El original ha cambiado desde que se tradujo.',
    untranslated: (other: string) => `Esta página todavía no está traducida. Está en ${other}.`,
    names: { en: 'inglés', es: 'español' },
  },
} as const satisfies Record<Tongue, unknown>;

/** The language of readers who do not read that of the club. Undefined where both are the same. */
export const otherTongue = ({ tongue, club }: Almanac): Tongue | undefined =>
  tongue === undefined || tongue === tongueOf(club.language) ? undefined : tongue;

/** The language of an entry's texts, where a page has to say it. */
export function langOf(almanac: Almanac, name: string): Tongue | undefined {
  const held = almanac.spoken?.get(name)?.tongue;
  if (otherTongue(almanac) === undefined) return held && held !== tongueOf(almanac.club.language) ? held : undefined;
  return held ?? tongueOf(almanac.club.language);
}

/** Behind the title of a page in another language than the club's. */
export function inLanguage(almanac: Almanac): string {
  const other = otherTongue(almanac);
  return other ? ` (${WORDS[other].names[other]})` : '';
}

/** Without the folder of another language: `/lists/package-arrival/` for `/es/lists/package-arrival/`. */
export const withoutTongue = (place: string): string => place.replace(/^\/(?:en|es)(?=\/)/, '');

/** `lists/package-arrival/` for `checklists/package-arrival`. Null for an entry without a page. */
export function placeOf(name: string): string | null {
  const [kind = '', id] = name.split('/');
  const path = collectionNames.includes(kind as 'checklists') ? collections[kind as 'checklists'].path : null;
  return path === null ? null : `${path.slice(1)}${id}/`;
}

/** The address of a page for the readers of this almanac: in their language where it is translated. */
export function addressFor(almanac: Almanac, address: string): string {
  const other = otherTongue(almanac);
  const [, room, id, rest = ''] = /^(\/[a-z-]+\/)([a-z0-9-]+)\/?(#.*)?$/.exec(address) ?? [];
  const kind = room && collectionNames.find((name) => collections[name].path === room);
  return other && kind && almanac.spoken.get(`${kind}/${id}`)?.tongue === other ? `/${other}${room}${id}/${rest}` : address;
}

/** The other languages in which pages are offered, each by its name in itself. */
export const tonguesOffered = ({ alsoIn }: Almanac): { tongue: Tongue; name: string }[] =>
  [...(alsoIn ?? [])].map(([tongue]) => ({ tongue, name: WORDS[tongue].offered }));

export type Told = {
  /** In which language the sentences are. */
  lang: Tongue;
  sentences: string[];
  /** The same page in other languages. */
  links: { path: string; words: string; tongue: Tongue }[];
};

/** What stands below the title of a page about its languages. Null for a page of one language, which is that of its readers. */
export function toldOf(almanac: Almanac, name: string): Told | null {
  const spoken = almanac.spoken?.get(name);
  const words = WORDS[almanac.tongue ?? 'en'];
  const place = placeOf(name);
  const links = [...(almanac.alsoIn ?? [])].flatMap(([tongue, names]) =>
    names.has(name) && place !== null
      ? [{ path: tongue === tongueOf(almanac.club.language) ? place : `${tongue}/${place}`, words: WORDS[tongue].here, tongue }]
      : [],
  );
  const { translated, tongue } = spoken ?? {};
  const sentences = translated
    ? [
        translated.checked ? words.checked(formatDay(translated.checked, languageFor(almanac))) : words.unchecked,
        ...(translated.isOlder ? [words.isOlder] : []),
      ]
    : tongue && tongue !== almanac.tongue
      ? [words.untranslated(words.names[tongue])]
      : [];
  return sentences.length + links.length > 0 ? { lang: almanac.tongue, sentences, links } : null;
}

/** How the words of a page write days: as the club does, or as its other readers do. */
export function languageFor(almanac: Almanac): Language {
  const other = otherTongue(almanac);
  return other === undefined ? almanac.club.language : other === 'en' ? 'en-US' : other;
}
