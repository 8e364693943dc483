import type * as English from './_text.en.ts';

export const title = 'Cómo se hace';
export const lead = 'Primero la respuesta corta, después las razones, y al final una cuenta para probar.';
export const confidence: typeof English.confidence = (sureness) => `Confianza: ${sureness}.`;
export const subjects: typeof English.subjects = {
  packages: 'Para empezar, y paquetes de abejas',
  people: 'Personas, picaduras y vecinos',
  queens: 'Reinas',
  brood: 'La cría y el tiempo',
  feeding: 'La alimentación',
  mites: 'Ácaros',
  swarms: 'Enjambres',
  flow: 'El flujo de néctar y la miel',
  fall: 'Otoño',
  winter: 'Invierno',
  law: 'La ley, y mover colmenas',
  records: 'Registros y aprendizaje',
  club: 'La asociación',
};
