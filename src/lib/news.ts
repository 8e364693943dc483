/* News for members who follow the almanac: bulletins, notices, meetings that are called off, and the dated changes of every page. */
import { spoken } from '../../shared/country/language-here.ts';
import { collections, type Collection } from '../schemas/collections.ts';
import type { Almanac } from './content.ts';
import { calledOffIn } from './meetings.ts';
import { emptyRooms } from './rooms.ts';
import * as en from './feeds.en.ts';
import * as es from './feeds.es.ts';

const text = () => spoken({ en, es });

/** `key` is permanent. `place` is a path below the base. Days are written as 2026-04-18. */
export type News = { key: string; title: string; words: string; place: string; day: string };

type Dated = { title: string; history?: { changed: string; what: string }[] | undefined };

/** Newest first. */
export function newsOf(almanac: Almanac): News[] {
  const placeOf = (kind: Collection, id: string): string => `${collections[kind].path!.slice(1)}${id}/`;
  const changes = (['checklists', 'bulletins', 'articles', 'meetings', 'treatments', 'sheets'] as const).flatMap((kind) =>
    (almanac[kind] as { id: string; data: Dated }[]).flatMap(({ id, data }) =>
      (data.history ?? []).map(({ changed, what }, number) => ({
        key: `change/${kind}/${id}/${number + 1}`,
        title: text().changed(data.title),
        words: what,
        place: placeOf(kind, id),
        day: changed,
      })),
    ),
  );
  const calledOff = almanac.meetings.flatMap(({ id, data }) => {
    const off = calledOffIn(data);
    return off
      ? [{ key: `called-off/${id}`, title: text().calledOff(data.title), words: off.why, place: placeOf('meetings', id), day: off.day }]
      : [];
  });
  const bulletins = almanac.bulletins.map(({ id, data }) => ({
    key: `bulletin/${id}`,
    title: data.title,
    words: data.summary,
    place: placeOf('bulletins', id),
    day: data.history?.at(-1)?.changed ?? data.checked,
  }));
  const notices = almanac.notices.map(({ id, data }) => ({
    key: `notice/${id}`,
    title: text().notice(data.title),
    words: data.says.join(' '),
    // The feed keeps a notice that is over, when its page may be gone.
    place: emptyRooms(almanac).has('notices/') ? '' : 'notices/',
    day: data.from,
  }));
  return [...changes, ...calledOff, ...bulletins, ...notices].sort((a, b) =>
    a.day === b.day ? (a.key < b.key ? -1 : 1) : a.day < b.day ? 1 : -1,
  );
}
