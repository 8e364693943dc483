import type * as English from './_text.en.ts';

export const title = 'Listas';
export const lead = 'Pasos para seguir en el apiario y en el taller, en el orden del año.';

export const when = 'Cuándo:';
export const ownDays: typeof English.ownDays = (days) => `sus propios días, ${days}`;
export const anyTime = 'en cualquier momento';
export const modes: typeof English.modes = {
  'read-do': 'Lea cada paso y después hágalo.',
  'do-confirm': 'Haga los trabajos y después márquelos.',
};
export const beforeYouStart = 'Antes de empezar';
export const cautions: typeof English.cautions = (number) => (number === 1 ? '1 regla de seguridad' : `${number} reglas de seguridad`);
