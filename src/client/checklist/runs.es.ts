import type * as English from './runs.en.ts';

export const hive: typeof English.hive = (number) => `Colmena ${number}`;
export const yardsAddress = 'la dirección del apiario';
export const dayOf: typeof English.dayOf = (list) => `${list}, día`;
