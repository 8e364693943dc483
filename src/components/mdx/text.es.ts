import type * as English from './text.en.ts';

export const backToStep: typeof English.backToStep = (number) => `Volver al paso ${number}`;
export const theClub = 'la asociación';
export const noDate = 'sin fecha en esta asociación';
export const calculateIt = 'Calcular';

export const law: typeof English.law = (place) => (place ? `La ley en ${place}` : 'La ley en su país');
export const callOffice: typeof English.callOffice = (office) => `Llame a ${office}{number}. `;
export const moreOnLaw = 'Más sobre la ley aquí';

export const notWritten: typeof English.notWritten = (office = 'la oficina encargada de las abejas donde usted vive') =>
  `Todavía no está escrito lo que vale aquí. Pregunte a ${office}{number}.`;

export const steps: typeof English.steps = (number) => (number === 1 ? '1 paso' : `${number} pasos`);
export const cases: typeof English.cases = (number) => (number === 1 ? '1 caso' : `${number} casos`);

export const progress: typeof English.progress = {
  count: '{done} de {all}',
  done: '{done} de {all} hechos.',
  next: 'Sigue',
  then: 'Sigue: {step}',
  all: 'Todo hecho',
};

export const allIsWell = 'Aquí todo está bien';
export const asked = 'Pregunté a: {who}';
export const takeCare = 'Tenga cuidado: ';
