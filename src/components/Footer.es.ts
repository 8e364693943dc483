import type * as English from './Footer.en.ts';

export const datesAreFor = 'Las fechas son para {district}. ';
export const published: typeof English.published = (club, place) => `${club}, ${place} · Edición del {edition}`;
export const demonstration = ' · Sitio de demostración: esta asociación, su zona, sus fechas y sus números son inventados.';
export const whoDecides = 'Deciden la etiqueta, el inspector apícola, el servicio de extensión y su médico, no esta página.';
export const about = 'Sobre este almanaque';
export const whoToCall = 'A quién llamar';
export const display = 'Ajustes de pantalla';
export const displayAndDistrict = 'Pantalla y zona';
export const review = 'Cómo se revisa';
export const reportMistake = 'Avisar de un error';
