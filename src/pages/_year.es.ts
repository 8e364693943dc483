import type * as English from './_year.en.ts';

export const title = 'El año';
export const lead = 'Toque un mes para ver qué empieza en él.';
export const inYourCalendar = 'En su propio calendario';
export const districtFile: typeof English.districtFile = (district) => `Qué hacer en ${district}, como archivo de calendario`;
export const meetingsFile = 'Las reuniones, como archivo de calendario';
export const aboutDates = 'Sobre estas fechas';
export const byDistrict = 'Las fechas son las de la zona que usted elige en los ajustes de pantalla.';
export const printed = 'Impresos, el anillo y la lista son una hoja para la pared.';
export const whereFrom = 'De dónde viene cada fecha';
export const whatBlooms = 'Qué florece y cuándo';
