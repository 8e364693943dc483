import type * as English from './_who-to-ask.en.ts';

const list = new Intl.ListFormat('es', { type: 'conjunction' });

export const title = 'A quién llamar';
export const lead = 'A quién preguntar, sobre qué y cuándo. Si una persona se siente mal, llame primero y lea después.';
export const byRole = 'Por función';
export const languages: typeof English.languages = (spoken) => `También en ${list.format(spoken)}.`;
export const agreed: typeof English.agreed = (until) => `Con su acuerdo hasta el ${until}; desde ese día el número no se muestra.`;
export const noConsent = 'Ahora no hay acuerdo para mostrar un número.';
export const writeToClub: typeof English.writeToClub = (address) => `Escriba a la asociación: ${address}`;
export const madeUp: typeof English.madeUp = (numbers) =>
  `Todos los números menos ${list.format(numbers)} son inventados, y también las direcciones.`;
