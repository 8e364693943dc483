import type * as English from './next-steps.en.ts';

export const rooms: typeof English.rooms = {
  'know-how/': ['Artículos', 'Todos, por tema.'],
  'pests/': ['Plagas y enfermedades', 'Plagas, enfermedades y tratamientos.'],
  'lists/': ['Listas', 'Todas, por época del año.'],
  'work-it-out/': ['Calculadoras', 'Todas.'],
  'who-to-ask/': ['A quién llamar', 'Nombres, horarios y números.'],
  'treatments/': ['Comparar tratamientos', 'Para su clima y sus alzas de miel.'],
  'year/bloom/': ['Qué está en flor', 'Las plantas de esta asociación, por fecha.'],
};
export const kinds: typeof English.kinds = { checklist: 'Lista', problem: 'Plaga o enfermedad', article: 'Artículo' };
