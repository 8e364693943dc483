import type { Seen } from '../../../shared/brood/dates.ts';
import { development, queenAfterEmerging, type Caste } from '../../../shared/brood/development.ts';
import { formatDay, formatDayRange } from '../../../shared/days/show-day.ts';
import { formatExact } from '../../../shared/numbers/show-number.ts';
import type * as English from './text.en.ts';

export const stageNames: typeof English.stageNames = {
  laid: 'Huevo puesto',
  sealed: 'Celda tapada',
  emerges: 'Nace la abeja',
  mates: 'La reina se aparea',
  lays: 'La reina pone huevos',
  'broodless-worker': 'Ya no queda cría de obrera',
  'broodless-drone': 'Ya no queda cría de zángano',
};

const casteNames: Readonly<Record<Caste, string>> = { worker: 'obrera', queen: 'reina', drone: 'zángano' };
const seenNames: Readonly<Record<Exclude<Seen, 'caged'>, (caste: Caste) => string>> = {
  egg: (caste) => `Huevos de ${casteNames[caste]}`,
  open: (caste) => (caste === 'queen' ? 'Celdas reales sin tapar' : `Celdas de ${casteNames[caste]} sin tapar`),
  sealed: (caste) => (caste === 'queen' ? 'Celdas reales tapadas' : `Celdas de ${casteNames[caste]} tapadas`),
  emerging: (caste) => ({ worker: 'Obreras que nacen', queen: 'Una reina que nace', drone: 'Zánganos que nacen' })[caste],
};

export const headline: typeof English.headline = ({ caste, seen, date }, dates, language) => {
  if (dates.broodlessWorker && dates.broodlessDrone)
    return `La puesta de huevos paró el ${formatDay(date, language)}: las últimas obreras nacen a más tardar el ${formatDay(dates.broodlessWorker, language)}, los últimos zánganos a más tardar el ${formatDay(dates.broodlessDrone, language)}.`;
  const found = `${seenNames[seen as Exclude<Seen, 'caged'>](caste)}, ${formatDay(date, language)}:`;
  if (dates.lays)
    return `${found} ${seen === 'emerging' ? 'pone' : 'una reina nacida de allí pone'} huevos ${rangeWords(dates.lays, language)}.`;
  return `${found} ${seen === 'emerging' ? 'sus huevos se pusieron' : 'las abejas nacen'} ${rangeWords(seen === 'emerging' ? dates.laid : dates.emerges, language)}.`;
};

export const questionWords: typeof English.questionWords = ({ caste, seen, date }, language) =>
  seen === 'caged'
    ? `La puesta de huevos paró el ${formatDay(date, language)}`
    : `${seenNames[seen](caste)}, revisión del ${formatDay(date, language)}`;

export const next: typeof English.next = (what, on, language) =>
  `Lo próximo: ${stageNames[what].toLowerCase()}, lo antes posible el ${formatDay(on, language)}.`;
export const nextLook: typeof English.nextLook = (day) =>
  `Todos estos días ya pasaron. Próxima revisión: el primer día cálido y sin viento desde el ${day}.`;
export const leaveShut = 'Deje cerrada una colmena con una reina joven hasta la fecha en que debe poner huevos.';

export const rangeWords: typeof English.rangeWords = ({ earliest, latest }, language) =>
  earliest === latest ? `el ${formatDay(earliest, language)}` : `del ${formatDayRange(earliest, latest, language)}`;

export const sumWords: typeof English.sumWords = ({ caste, seen }) => {
  const { hatchesDays, sealedDays, emergesDays } = development[caste];
  const { matesFromEggDays, laysFromEggDays } = queenAfterEmerging;
  const queen =
    caste === 'queen' ? ` Se aparea el día ${spanWords(matesFromEggDays)} y pone huevos desde el día ${spanWords(laysFromEggDays)}.` : '';
  const one = { worker: 'Una obrera', queen: 'Una reina', drone: 'Un zángano' }[caste];
  const days = `El día de la puesta es el día 0. ${one} sale del huevo el día ${hatchesDays}, su celda se tapa el día ${spanWords(sealedDays)} y nace el día ${spanWords(emergesDays)}.${queen}`;
  const age: Record<Seen, string> = {
    egg: `Un huevo tiene de 0 a ${hatchesDays} días.`,
    open: `Una celda sin tapar tiene de ${hatchesDays} a ${formatExact(sealedDays.most)} días, y se tapa hoy o más tarde.`,
    sealed: `Una celda tapada tiene de ${formatExact(sealedDays.least)} a ${formatExact(emergesDays.most)} días, y la abeja nace hoy o más tarde.`,
    emerging: `Una abeja que nace tiene ${spanWords(emergesDays)} días.`,
    caged: `El último huevo se puso el día en que paró la puesta. Obreras: + ${development.worker.emergesDays.most} días. Zánganos: + ${development.drone.emergesDays.most} días.`,
  };
  return `${days} ${age[seen]}${[sealedDays, emergesDays].some(({ least }) => !Number.isInteger(least)) ? ' Los medios días se redondean hacia afuera.' : ''}`;
};

export const spanWords: typeof English.spanWords = ({ least, most }) =>
  least === most ? formatExact(least) : `${formatExact(least)} a ${formatExact(most)}`;

export const asked: typeof English.asked = { caste: 'qué tipo de abeja es', seen: 'qué se vio', date: 'el día de la revisión' };

export const dates: typeof English.dates = {
  queenOnly: 'Solo de una reina.',
  stoppedOnly: 'Solo donde paró la puesta.',
  to: (day) => `a ${day}`,
};

export const chart: typeof English.chart = {
  stages: { laid: 'Puesto', sealed: 'Tapado', emerges: 'Nace', mates: 'Se aparea', lays: 'Pone' },
  stopped: 'paró la puesta',
  seen: 'visto',
  label: 'Cada etapa es una barra de su primer a su último día posible, contados desde la línea de trazos. La tabla tiene los mismos días.',
};

export const fields: typeof English.fields = {
  caste: 'Tipo de abeja',
  castes: { worker: 'Obrera', queen: 'Reina', drone: 'Zángano' },
  seen: 'Qué se vio',
  sights: {
    egg: 'Huevo',
    open: 'Celda sin tapar con una larva',
    sealed: 'Celda tapada',
    emerging: 'Abeja que nace',
    caged: 'Paró la puesta: la reina está enjaulada, falta o se sacó',
  },
  date: 'Día de la revisión',
  dateHint: (such) => `Por ejemplo ${such}. Si paró la puesta: el día en que paró.`,
};

export const example: typeof English.example = {
  what: 'Qué',
  when: 'Cuándo',
  stages: {
    laid: 'cuando se puso',
    sealed: 'se le pone una tapa',
    emerges: 'se abre paso con la boca',
    mates: 'en días cálidos y sin viento',
    lays: 'busque huevos entonces',
  },
  table: 'Días desde el huevo; el día de la puesta es 0',
  tableName: 'Días desde el huevo',
  kind: 'Tipo',
  castes: { worker: 'obrera', queen: 'reina', drone: 'zángano' },
  hatches: 'Sale del huevo',
  sealed: 'Se tapa',
  emerges: 'Nace',
};

export const background: typeof English.background = {
  heading: 'En qué se basan las fechas',
  windows: 'Las tablas impresas difieren en un día; por eso cada fecha es un período. Los medios días se redondean hacia afuera.',
  mates: 'Una reina se aparea {mates} después de nacer, y pone huevos {lays} más tarde.',
  eggs: 'Así pone sus primeros huevos el día {day} desde su propio huevo.',
  drone: 'Un zángano puede aparearse {mature} después de nacer.',
  sealedOnly: 'Solo cría tapada, sin larvas en celdas abiertas: hace {days} o más que no se pone ningún huevo.',
  swarm: 'El primer enjambre sale más o menos cuando se tapa la primera celda real, el día {day}.',
};
