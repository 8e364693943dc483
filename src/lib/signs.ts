/*
 * Signs grouped by place, each with the bulletins that list it, and every bulletin as input for the ranking of shared/signs. The page
 * prints both as a key. The form passes the second to the ranking.
 */
import { spoken } from '../../shared/country/language-here.ts';
import type { Tongue } from '../../shared/country/language.ts';
import type { ShownSign, Trouble } from '../../shared/signs/rank.ts';
import { phases } from '../../shared/season/phases.ts';
import { SIGN_PLACES, SHOWS, STRENGTHS } from '../schemas/signs.ts';
import type { Almanac, Item } from './content.ts';
import type { Bulletin } from '../schemas/bulletins.ts';
import type { Sign } from '../schemas/signs.ts';
import { windowsOf } from './season.ts';
import * as en from './signs.en.ts';
import * as es from './signs.es.ts';

export type PointsTo = {
  id: string;
  title: string;
  lang: Tongue | undefined;
  strength: ShownSign['strength'];
  shows: ShownSign['shows'];
  law: boolean;
};
export type SignHere = { id: string; sign: Sign; pointsTo: PointsTo[] };

const text = () => spoken({ en, es });

/** The signs of each place. Signs of reportable troubles come first, then strong signs, then signs that are mostly harmless. */
export function signsByPlace(almanac: Almanac): { place: string; words: string; signs: SignHere[] }[] {
  return SIGN_PLACES.map((place) => ({
    place,
    words: text().places[place],
    signs: almanac.signs
      .filter(({ data }) => data.where === place)
      .map((item) => ({ id: item.id, sign: item.data, pointsTo: pointsTo(almanac, item.id) }))
      .sort((a, b) => tells(b) - tells(a)),
  })).filter(({ signs }) => signs.length > 0);
}

const tells = ({ pointsTo }: SignHere): number =>
  pointsTo.some(({ law, strength }) => law && strength !== 'weak')
    ? 3
    : pointsTo[0]?.strength === 'strong'
      ? 2
      : pointsTo.length > 0
        ? 1
        : 0;

/** Bulletins in which a sign occurs, those with the strongest signs first. */
const pointsTo = (almanac: Almanac, sign: string): PointsTo[] =>
  troublesOf(almanac)
    .flatMap(({ item, shown }) =>
      shown
        .filter((one) => one.sign === sign && one.shows !== 'never')
        .map(({ strength, shows }) => ({
          id: item.id,
          title: item.data.title,
          lang: item.lang,
          strength,
          shows,
          law: item.data.status === 'law',
        })),
    )
    .sort((a, b) => STRENGTHS.indexOf(a.strength) - STRENGTHS.indexOf(b.strength) || SHOWS.indexOf(a.shows) - SHOWS.indexOf(b.shows));

/** The bulletins by how strongly a sign points to them, as in "Strongly: American foulbrood. Weakly: chalkbrood." */
export const keyLines = (pointsTo: readonly PointsTo[]): { words: string; troubles: PointsTo[] }[] =>
  STRENGTHS.map((strength) => ({
    words: text().pointsTo(strength),
    troubles: pointsTo.filter((each) => each.strength === strength),
  })).filter(({ troubles }) => troubles.length > 0);

export type TroubleHere = Trouble & { item: Item<Bulletin> };

/** Bulletins that list signs. A withdrawn sign is skipped. */
export function troublesOf(almanac: Almanac): TroubleHere[] {
  const there = new Set(almanac.signs.map(({ id }) => id));
  return almanac.bulletins.flatMap((item): TroubleHere[] => {
    const shown = (item.data.signs ?? []).filter(({ sign }) => there.has(sign));
    const phases = phasesOf(almanac, item.data.when);
    return shown.length === 0
      ? []
      : [
          {
            item,
            id: item.id,
            mustReport: item.data.status === 'law',
            harmless: item.data.status === 'settled',
            shown,
            ...(phases ? { phases } : {}),
          },
        ];
  });
}

/** The phases that its window touches, or undefined where it has no date. */
function phasesOf({ seasons }: Almanac, when: string): string[] | undefined {
  const window = windowsOf(when, seasons)?.[0]?.window;
  if (!window) return undefined;
  const meets = (a: { from: string; to: string }, day: string): boolean =>
    a.from <= a.to ? a.from <= day && day <= a.to : day >= a.from || day <= a.to;
  return phases.filter((phase) => {
    const own = seasons[0]!.days.phases[phase]!;
    // A window that ends on the first day of a phase does not count for it.
    return (meets(window, own.from) && own.from !== window.to) || meets(own, window.from);
  });
}

/**
 * The contact for brood that looks wrong: the office of the first reportable bulletin, then the inspector, the extension service or a
 * mentor.
 */
export function ringFirst(almanac: Almanac): string | undefined {
  const law = almanac.bulletins.find(({ data }) => data.status === 'law')?.data.law?.[0]?.duty;
  const known = almanac.club.contacts.map(({ duty }) => duty);
  return [law, 'inspector', 'extension', 'mentor'].find((duty) => duty !== undefined && known.includes(duty));
}
