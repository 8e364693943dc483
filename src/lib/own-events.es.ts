import type * as English from './own-events.en.ts';

export const OWN_EVENTS: typeof English.OWN_EVENTS = {
  installing: { asks: 'El día en que las instaló', since: 'instaladas el {day}' },
  caging: { asks: 'El día en que enjauló a la reina', since: 'reina enjaulada el {day}' },
  treating: { asks: 'El día en que empezó el tratamiento', since: 'tratadas desde el {day}' },
  hiving: { asks: 'El día en que las pasó a la colmena', since: 'en la colmena desde el {day}' },
  splitting: { asks: 'El día de la división o del enjambre', since: 'divididas el {day}' },
  requeening: { asks: 'El día en que entró la reina nueva, en su jaula', since: 'reina nueva desde el {day}' },
};

const AFTER: Readonly<Record<English.OwnEvent, string>> = {
  installing: 'instalarlas',
  caging: 'enjaular a la reina',
  treating: 'empezar el tratamiento',
  hiving: 'pasarlas a la colmena',
  splitting: 'la división o el enjambre',
  requeening: 'poner a la reina nueva',
};

export const ownDays: typeof English.ownDays = (from, to, event) =>
  from === to
    ? `día ${from} después de ${AFTER[event as English.OwnEvent]}`
    : `del día ${from} al día ${to} después de ${AFTER[event as English.OwnEvent]}`;
