import type * as English from './feeds.en.ts';

export const feedTitle: typeof English.feedTitle = (almanac) => `${almanac}: novedades`;
export const feedDescription: typeof English.feedDescription = (club) => `Boletines, anuncios y cambios de ${club}`;

export const changed: typeof English.changed = (title) => `Cambió: ${title}`;
export const notice: typeof English.notice = (title) => `Anuncio: ${title}`;
export const calledOff: typeof English.calledOff = (what) => `Cancelado: ${what}`;

export const meetingsOf: typeof English.meetingsOf = (club) => `Reuniones de ${club}`;
export const calledOffBy: typeof English.calledOffBy = (who) => `Si se cancela, se avisa así: ${who}.`;
export const bring: typeof English.bring = (things) => `Traiga: ${things.join('; ')}.`;

export const seasonTitle: typeof English.seasonTitle = (club, district) => `${club}: qué hacer en ${district}`;
export const daysFrom: typeof English.daysFrom = (district, basis) => `Los días en ${district}: ${basis}`;

export const shortName: string = 'Almanaque';
export const description: typeof English.description = (club) => `El almanaque de ${club}`;
export const shortcuts: typeof English.shortcuts = { now: 'Ahora', checklists: 'Listas', miteCount: 'Conteo de ácaros' };
