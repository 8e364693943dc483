import type * as English from './_text.en.ts';

export const title = 'Plagas y enfermedades';
export const lead = 'Qué se ve, con qué se confunde, la prueba en el apiario y qué hacer hoy.';
export const startFromSigns = 'Empezar por las señales';
export const treatments = 'Tratamientos por ingrediente activo';
export const groups = { law: 'Hay que reportarlas', act: 'Hay que actuar', watch: 'Hay que vigilarlas', settled: 'No es urgente' };
export const statusIn: typeof English.statusIn = (status, place) => `${status} en ${place}`;
export const lookAtThese = 'Vea también:';
export const alsoCalled = 'También se llama {names}.';
export const confidence: typeof English.confidence = (sureness) => `Confianza: ${sureness}.`;
