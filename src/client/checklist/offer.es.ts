import type * as English from './offer.en.ts';

export const sharedChecklist = 'Lista compartida';
export const unreadable = 'No se puede leer este enlace a una lista compartida.';
export const cutShort = 'Puede que se haya cortado. No se cambió nada.';

const count = (number: number, one: string): string => `${number} ${one}${number === 1 ? '' : 's'}`;
export const described: typeof English.described = (name, since, done, all, notes, unknown) => {
  const parts = [name, since, `${done} de ${all} pasos hechos`, notes > 0 ? count(notes, 'nota') : ''];
  const gone =
    unknown > 0 ? (unknown === 1 ? ' 1 de sus pasos no está en esta lista.' : ` ${unknown} de sus pasos no están en esta lista.`) : '';
  return `Alguien compartió esta lista con usted: ${parts.filter(Boolean).join(', ')}.${gone}`;
};
export const from: typeof English.from = (day) => `desde el ${day}`;
export const isHere = 'Ya está en este dispositivo.';
export const hiveIsHere: typeof English.hiveIsHere = (hive) => `${hive} ya está en este dispositivo.`;
export const hasAll: typeof English.hasAll = (hive) => `${hive}, en este dispositivo, ya lo tiene todo.`;

export const added: typeof English.added = (here, hive) =>
  `${here.length === 1 ? `${here[0]} queda aquí como está` : `Sus ${here.length} colmenas quedan aquí como están`}. La compartida se agrega como ${hive}.`;
export const adds: typeof English.adds = (hive, done, named, notes, differs) => {
  const words = named.map((step) => `«${step}»`);
  if (done > named.length) words.push(`${done - named.length} más`);
  const steps = done === 1 ? '1 paso hecho' : `${done} pasos hechos`;
  const all = [done > 0 ? `${steps} (${words.join(', ')})` : '', notes > 0 ? count(notes, 'nota') : ''].filter(Boolean);
  return `Agrega ${all.join(' y ') || 'una fecha o un nombre'} a ${hive}. ${differs ? 'Donde los dos difieren, queda lo de usted.' : 'Lo que usted tiene se queda.'}`;
};

export const use = 'Usarla aquí';
export const notNow = 'Ahora no';
export const undo = 'Deshacer';
export const notKept = 'Este navegador no puede guardarla: la próxima vez, abra el enlace de nuevo.';
export const changedSince = 'Usted cambió esta lista desde entonces.';
export const stays = 'Queda como está.';
