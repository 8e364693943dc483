import type { ShownSign } from '../../../shared/signs/rank.ts';
import type * as English from './text.en.ts';

export const headline: typeof English.headline = ({ outcome }, titles, usual) => {
  if (outcome === 'nothing-picked') return '';
  if (outcome === 'no-match')
    return usual > 0 ? 'Casi siempre no es nada, y nada más de esta lista coincide.' : 'Nada de esta lista coincide.';
  if (outcome === 'only-harmless') return `Solo coinciden cosas que no hacen daño: ${titles.join(', ')}.`;
  return titles.length === 1
    ? `Revise si es esto: ${titles[0]}.`
    : `Revise estas ${titles.length} posibilidades. Primero esta: ${titles[0]}.`;
};

const SHOWS: Readonly<Record<ShownSign['shows'], string>> = {
  always: 'siempre',
  often: 'a menudo',
  sometimes: 'a veces',
  seldom: 'rara vez',
  never: 'nunca',
};

export const whyLines: typeof English.whyLines = ({ fits, against, open, outOfSeason }, wordsOf) => {
  const missing = against.filter(({ why }) => why === 'not-there');
  const never = against.filter(({ why }) => why === 'never-shows');
  const speaks = [
    ...never.map(({ sign }) => `${wordsOf(sign)}, que nunca se ve en este problema`),
    ...missing.map(({ sign }) => `no se vio: ${wordsOf(sign)}`),
    ...(outOfSeason ? ['raro en esta época del año'] : []),
  ];
  return [
    ['Coincide', fits.map(({ sign, shows }) => `${wordsOf(sign)} (${SHOWS[shows]})`).join('; ')],
    ...(speaks.length > 0 ? [['No coincide', speaks.join('; ')] as [string, string]] : []),
    ...(open.length > 0 ? [['Esto no lo explica', open.map(wordsOf).join('; ')] as [string, string]] : []),
  ].map(([name, words]) => [name!, `${words}.`]);
};

export const usually: typeof English.usually = (sign, usual) => `${sign}: ${usual}`;
export const lessLikely: typeof English.lessLikely = (titles) => `Menos probable: ${titles.join(', ')}.`;
export const ticked: typeof English.ticked = (count) => (count === 1 ? '1 marcada' : `${count} marcadas`);
export const lookNext = 'Busque esto ahora';
export const tellsAbout: typeof English.tellsAbout = (titles) => `Ayuda a decidir sobre: ${titles.join(', ')}`;
export const isThere = 'Sí está';
export const isNotThere = 'No está';
export const takeBack = 'Quitar estas respuestas';
export const lookedFor: typeof English.lookedFor = (signs) => `Se buscó y no está: ${signs.join('; ')}. `;
