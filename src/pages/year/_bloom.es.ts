import type * as English from './_bloom.en.ts';

const GIVES = { pollen: 'polen', nectar: 'néctar', honeydew: 'mielada' };

export const title = 'Qué florece y cuándo';
export const lead: typeof English.lead = (district) => `Las plantas que usan las abejas, en el orden en que florecen en ${district}.`;
export const gives: typeof English.gives = (what) => `da ${what.map((each) => GIVES[each]).join(', ')}`;
export const stageHead: typeof English.stageHead = (stage) => `${stage.charAt(0).toUpperCase()}${stage.slice(1)}:`;
export const withoutDate = 'Sin fecha aquí';
export const howCounted =
  'La suma de grados-día de una planta se cuenta solo con el método, la base y el primer día de su propia lista. Los días son los de un año normal: el sol, la pendiente y la variedad los cambian, y también cada año.';
