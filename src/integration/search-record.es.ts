import { shownMonth } from '../../shared/days/month-names.ts';
import type * as English from './search-record.en.ts';

const months = Array.from({ length: 12 }, (_, month) => shownMonth(month + 1, 'es'));

export const overviews: typeof English.overviews = {
  'year/': ['qué hacer este mes', months.join(' ')],
  'meetings/': ['próxima reunión', 'cuándo y dónde nos reunimos', 'fechas de las reuniones', 'calendario'],
  'signs/': ['empezar por las señales', 'qué tienen mis abejas', 'síntomas', 'qué enfermedad es', 'cría enferma'],
  'about/': [],
  'words/': [],
};
