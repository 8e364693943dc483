import type * as English from './Sidebar.en.ts';

export const label = 'A quién llamar, fuentes y revisión';
export const whoToCall = 'A quién llamar';
export const checked: typeof English.checked = (day, by) => `Revisado el ${dayBy(day, by)}.`;
export const nextCheck = 'Próxima revisión: {day}';
export const nextCheckTerm = 'Próxima revisión';
export const fold: typeof English.fold = (count, hasReview) =>
  count === 0 ? 'Revisión' : `Fuentes (${count})${hasReview ? ' y revisión' : ''}`;
export const sourcesByNumber = 'Fuentes por número';
export const allSources = 'Ver todas las fuentes de esta cifra';
export const alsoRead = 'Lea también';
export const sources = 'Fuentes';
export const sourcesAt: typeof English.sourcesAt = (address) => `Fuentes: ${address}`;
export const review = 'Revisión';
export const publishedBy = 'Publicado por';
export const lastChecked = 'Última revisión';
export const dayBy: typeof English.dayBy = (day, by) => `${day}${by ? ` (${by})` : ''}`;
export const comparedBy: typeof English.comparedBy = (club) => `Comparado por ${club}`;
export const notYet = 'Todavía no';
export const changed = 'Qué cambió';
