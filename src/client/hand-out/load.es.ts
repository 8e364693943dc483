import type * as English from './load.en.ts';

export const noSignal =
  'No se pudo cargar esta página. No está en la copia de este dispositivo, o la copia todavía no está completa. Abra estas hojas otra vez con señal.';
export const noPage = 'No hay ninguna página en esta dirección. Quítela y busque su título en las listas de abajo.';
export const takenDown: typeof English.takenDown = (reason) =>
  `Esta página se retiró, y por eso no entra en estas hojas. Quítela aquí. ${reason}`.trim();
export const past = ' (ya pasó). Pregunte antes de confiar en esta página';
