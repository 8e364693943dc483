import type * as English from './EvidenceTable.en.ts';

export const heads: typeof English.heads = ['Decimos', 'Queremos decir'];
export const rows = [
  ['bien establecido', 'las fuentes coinciden, y una se abrió y se leyó'],
  ['probable', 'una buena fuente, abierta y leída'],
  ['las fuentes no están de acuerdo', 'los dos lados están juntos; la asociación dice cuál sigue'],
  ['práctica común, sin fuente', 'los apicultores lo hacen; nadie lo midió, o no encontramos un estudio'],
  ['de memoria', 'escrito sin abrir la fuente: no confíe en ello'],
] as const;
