import type * as English from './files.en.ts';

export const noLongerHere: typeof English.noLongerHere = (step) => `${step} (ya no está en esta lista)`;
