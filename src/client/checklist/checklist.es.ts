import type * as English from './checklist.en.ts';

export const count: typeof English.count = (done, all) => `${done} de ${all}`;
export const progress: typeof English.progress = (done, all) => `${count(done, all)} hechos.`;
export const next: typeof English.next = (step) => `Sigue: ${step}`;
export const allDone = 'Todo hecho';
