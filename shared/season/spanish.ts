/**
 * The parts and days of a hive's year in Spanish, and a Spanish `when` in the English form: "en la enjambrazón", "del 1 de octubre al 15
 * de noviembre", "de 2 semanas antes del flujo principal al flujo principal", "del día 3 al día 5 después de instalar", "en cualquier
 * momento". Words: docs/glossary-es.md.
 */
import { monthNames, shownMonth } from '../days/month-names.ts';
import { anchorName, anchors, ownEvents, phaseName, phases, type Phase } from './phases.ts';
import type { Point } from './when.ts';

export const spanishPhases: Readonly<Record<Phase, string>> = {
  'winter-rest': 'descanso de invierno',
  'build-up': 'crecimiento de primavera',
  swarming: 'enjambrazón',
  'main-flow': 'flujo principal',
  dearth: 'escasez de flores',
  'fall-preparation': 'preparación de otoño',
};

const DAYS: Readonly<Record<string, string>> = {
  'first-pollen': 'primer polen',
  'first-drone': 'primer zángano',
  'last-freeze': 'última helada',
  swarm: 'primer enjambre',
  'main-flow-start': 'inicio del flujo principal',
  'main-flow-end': 'fin del flujo principal',
  'fall-flow': 'flujo de otoño',
  'first-freeze': 'primera helada',
  'last-syrup': 'último jarabe',
  cluster: 'racimo de abejas',
  'brood-stops': 'fin de la cría',
};

/** The name of a phase or of an anchor. */
export const spanishName = (id: string): string => spanishPhases[id as Phase] ?? DAYS[id] ?? id;

export const spanishEvents: Readonly<Record<(typeof ownEvents)[number], string>> = {
  installing: 'instalar',
  caging: 'enjaular',
  treating: 'tratar',
  hiving: 'pasar a la colmena',
  splitting: 'dividir',
  requeening: 'cambiar la reina',
};

export const SPANISH_FORMS =
  '"del 1 de octubre al 15 de noviembre", "en la enjambrazón", "de 2 semanas antes del flujo principal al flujo principal", "del día 3 al día 5 después de instalar" or "en cualquier momento"';

/** True where an author may have meant Spanish, so that the suggestion is in Spanish, too. */
export const isLikelySpanish = (text: string): boolean =>
  /^(?:en|del?|desde|d[ií]a|antes|despu[eé]s)\b|\b\d{1,2} de\b|\b(?:antes|despu[eé]s) de/i.test(text) ||
  Object.values(spanishPhases).some((name) => plain(text).includes(plain(name)));

/** The English form of a Spanish `when`. Undefined for any other text. */
export function fromSpanish(text: string): string | undefined {
  const said = plain(text);
  if (said === 'en cualquier momento') return 'any time';
  const phase = phases.find((each) => said.replace(/^en (?:el |la )?/, '') === plain(spanishPhases[each]));
  if (phase && said.startsWith('en ')) return `in ${phaseName(phase)}`;
  const own = /^(?:del? )?dia (\d+)(?: (?:al?|hasta(?: el)?)(?: dia)? (\d+))? despues de (.+)$/.exec(said);
  const event = ownEvents.find((each) => plain(spanishEvents[each]) === own?.[3]);
  if (own && event) return `day ${own[1]}${own[2] ? ` to day ${own[2]}` : ''} after ${event}`;
  const ends = said.replace(/^(?:desde(?: el| la)?|del?(?: la)?) /, '').split(/ (?:hasta(?: el| la)?|al|a la|a) /);
  // "del 1 al 15 de octubre" says the month once.
  if (ends.length === 2 && /^\d{1,2}$/.test(ends[0]!)) ends[0] += ends[1]!.replace(/^\d{1,2}/, '');
  const points = ends.map(pointFrom);
  return points.length <= 2 && points.every((each) => each !== undefined) ? points.join(' to ') : undefined;
}

function pointFrom(said: string): string | undefined {
  const day = /^(\d{1,2}) de ([a-z]+)$/.exec(said);
  if (day) {
    const month = monthNames.find((_, index) => shownMonth(index + 1, 'es') === day[2]);
    return month && `${Number(day[1])} ${month}`;
  }
  const [, count, unit, side, name] = /^(?:(un|una|\d+) (dia|semana)s? (antes|despues) de(?:l| la)? )?(.+)$/.exec(said) ?? [];
  const anchor = anchors.find((each) => plain(spanishName(each)) === name);
  if (!anchor) return undefined;
  if (!count) return anchorName(anchor);
  const number = /^una?$/.test(count) ? 1 : Number(count);
  return `${number} ${unit === 'dia' ? 'day' : 'week'}${number === 1 ? '' : 's'} ${side === 'antes' ? 'before' : 'after'} ${anchorName(anchor)}`;
}

/** One end of a span in words, for a list that this club has no date for: "2 semanas antes: fin de la cría". */
export function spanishPoint(point: Point): string {
  if (point.kind === 'day') return `${point.day} de ${shownMonth(point.month, 'es')}`;
  const days = Math.abs(point.offsetDays);
  if (days === 0) return spanishName(point.anchor);
  const [count, one, many] = days % 7 === 0 ? [days / 7, 'semana', 'semanas'] : [days, 'día', 'días'];
  return `${count} ${count === 1 ? one : many} ${point.offsetDays < 0 ? 'antes' : 'después'}: ${spanishName(point.anchor)}`;
}

const plain = (text: string): string => text.trim().replace(/\s+/g, ' ').toLowerCase().normalize('NFD').replace(/\p{M}/gu, '');
