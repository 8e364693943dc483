import type * as English from './own-days.en.ts';

const count = (days: number): string => (days === 1 ? '1 día' : `${days} días`);

export const late: typeof English.late = (days) => `${count(days)} de atraso`;
export const ahead: typeof English.ahead = (days, isSpan) => (isSpan ? 'empieza ' : '') + (days === 1 ? 'mañana' : `en ${count(days)}`);
export const today: typeof English.today = (isSpan) => (isSpan ? 'hasta hoy' : 'hoy');
export const dueNow = 'toca ahora';
