import type * as English from './figures.en.ts';

export const sureness: typeof English.sureness = {
  settled: 'bien establecido',
  likely: 'probable',
  contested: 'las fuentes no están de acuerdo',
  habit: 'práctica común, sin fuente',
  memory: 'de memoria, sin abrir la fuente',
};
export const seen = { quoted: ' (citado en otra fuente)', memory: ' (de memoria)' };
export const checked: typeof English.checked = (day) => `Revisado el ${day}`;
