import type * as English from './layout.en.ts';

export const past = ' (ya pasó). Pregunte antes de confiar en esta página.';
export const next: typeof English.next = (title, time) => `Próxima: ${title}, ${time}.`;
export const noMeeting = 'Esta edición no tiene más reuniones. Pregunte a la asociación.';
