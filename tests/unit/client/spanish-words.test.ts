/*
 * Every Spanish sentence of the checklists, the frame, the search, the hall, the hand-out, the signs and the offline copy, said with
 * values: none has a hole, and none has English words. `SAID` has the values of each function; a function without any fails.
 */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { files } from '../../architecture/tree.ts';

const ROOMS =
  /^src\/(?:client|service-worker|layouts\/BaseLayout|lib\/own-events|pages\/(?:lists\/|_(?:card|hall|hand-out|search|signs))|components\/(?:checklist|mdx|charts|ContactNumber|DueRows|Footer|Notice|OnThisPage|Sidebar|SourceMark)).*\.es\.ts$/;

/** What the interface replaces later: a slot for a link, a day or a number. */
const SLOT = /\{(?:all|day|district|done|edition|link|number|step|title|who)\}/g;
const candidate = {
  fits: [{ sign: 'huevos', shows: 'often' }],
  against: [
    { sign: 'larvas', why: 'not-there' },
    { sign: 'olor', why: 'never-shows' },
  ],
  open: ['costras'],
  outOfSeason: true,
};
const sign = (id: string): string => id;
const ranking = (outcome: string) => ({ outcome });

/** By file and function: the values of each time it is said. */
const SAID: Record<string, Record<string, unknown[][]>> = {
  'client/checklist/actions': {
    nowFor: [['Colmena 2']], savedAs: [['listas.json']], datesCount: [['18 de abril']], addNoteOn: [['Ponga']], changeNoteOn: [['Ponga']],
    noteOn: [['Ponga']], fileAdds: [[undefined, 1, 0, 2, []], ['18 de abril', 3, 1, 1, ['lista, día']]],
  },
  'client/checklist/exports': { savedCalendar: [['a.ics', 1, 0], ['a.ics', 3, 1], ['a.ics', 3, 2]], savedAs: [['a.csv']] },
  'client/checklist/files': { noLongerHere: [['paso']] },
  'client/checklist/lines': { filed: [['Colmena 1', '2026-04-18']], isFor: [['Colmena 1']], start: [[], ['instaladas el 18']] },
  'client/checklist/say-more': { gone: [[2]] },
  'client/checklist/offer': {
    described: [['', '', 1, 20, 0, 0], ['Verde', 'instaladas el 18', 1, 20, 1, 1], ['', '', 2, 20, 2, 2]], from: [['18 de abril']],
    hiveIsHere: [['Verde']], hasAll: [['Verde']], added: [[['Verde'], 'Azul'], [['Verde', 'Roja'], 'Azul']],
    adds: [['Verde', 1, ['Ponga'], 0, false], ['Verde', 5, ['Ponga'], 2, true], ['Verde', 0, [], 0, true]],
  },
  'client/checklist/own-days': { late: [[1], [2]], ahead: [[1, true], [3, false]], today: [[true], [false]] },
  'client/checklist/runs': { hive: [[1]], dayOf: [['lista']] },
  'client/hall/hall': { place: [[1, 9]] },
  'client/hand-out/epub': { by: [['Asociación', 'Almanaque', 'edición del 18']] },
  'client/hand-out/hand-out': {
    title: [[], ['Reunión de abril']], button: [['Subir', 'Enjambres']], moved: [['Enjambres']], removed: [['Enjambres']], lacking: [[1, 3]],
    fileSaved: [[0, 3], [1, 3]], copyThis: [['https://a.example']], isNumber: [['Enjambres', 1, 3]], found: [[1], [2]], past: [['18 de abril']],
    leftOut: [[['a', 'b']]],
  },
  'client/hand-out/load': { takenDown: [['Porque no.']] },
  'client/hand-out/printed': { by: [['Asociación', 'Almanaque', 'edición del 18']], missing: [['enjambres']], sourcesInFull: [[['Atlas'], 'a.example']] },
  'client/layout/layout': { next: [['Reunión', '18 de abril']] },
  'client/layout/now': {
    steps: [[1], [2]], left: [[1, 5], [2, 5]], until: [['18']], from: [['18']], inBloom: [[[]], [['Sauce', 'Olmo']]], blooms: [['Sauce', '18']],
    today: [['sábado', '18 de abril', false, 'El valle'], ['sábado', '18 de abril', false]], inDays: [[1], [3]], onDay: [['18']],
    season: [['enjambrazón', 'flujo principal', 'en 3 días']],
  },
  'client/layout/source-note': { source: [['1']] },
  'client/search/results': { nextMeeting: [['Abril']], alsoLookedFor: [[['varroa']]], found: [[0], [1], [2]], foundIn: [[2, ['Listas']]], showAll: [[1], [9]] },
  'client/sign-finder/text': {
    headline: [[ranking('nothing-picked'), [], 0], [ranking('no-match'), [], 0], [ranking('no-match'), [], 1], [ranking('only-harmless'), ['Polen'], 0], [ranking('ranked'), ['Loque'], 0], [ranking('ranked'), ['Loque', 'Varroa'], 0]],
    whyLines: [[candidate, sign]], usually: [['Polen', 'normal']], lessLikely: [[['Loque']]], ticked: [[1], [2]],
    tellsAbout: [[['Loque']]], lookedFor: [[['olor']]],
  },
  'components/ContactNumber': { call: [['112']] },
  'components/Footer': { published: [['Asociación', 'Valle']] },
  'components/Notice': { until: [['18 de abril']], notice: [['Hasta el 18', '', 'Ana', 'junta', ''], ['Hasta el 18', 'El valle', 'Ana', 'junta', 'Atlas']] },
  'components/Sidebar': { checked: [['18'], ['18', 'junta']], fold: [[0, true], [2, true], [2, false]], sourcesAt: [['a.example']], dayBy: [['18'], ['18', 'junta']], comparedBy: [['Asociación']] },
  'components/SourceMark': { source: [[1]] },
  'components/charts/text': {
    colonies: [['Mayo', 1], ['Mayo', 2]], countsChart: [['Conteos']], warmthAndBloom: [['El valle']], curve: [['°C'], ['°C', '1200']], band: [['°C']],
    sum: [['10 °C', '1 de enero', '1200']], low: [['°C']], high: [['°C']], beginsIn: [['ene', 'enero']], inDistrict: [['El valle']],
  },
  'components/checklist/text': { suchDay: [['18 de abril']] },
  'components/mdx/page-words': { 'words.tableOf': [[['Día']]] },
  'components/mdx/text': { backToStep: [['3']], law: [[], ['Chile']], callOffice: [['Ana']], notWritten: [[], ['Ana']], steps: [[1], [2]], cases: [[1], [2]] },
  'layouts/BaseLayout': { about: [['Asociación', 'Condado']], onPaper: [['Almanaque', true, 'a.example', '18'], ['Almanaque', false, 'a.example', '18']] },
  'lib/own-events': { ownDays: [[1, 1, 'installing'], [3, 5, 'caging'], [3, 5, 'treating'], [3, 5, 'hiving'], [3, 5, 'splitting'], [3, 5, 'requeening']] },
  'pages/_card': { club: [['Asociación']], wash: [[300]], level: [[3]], syrup: [['20 °C']], numbers: [['Almanaque', '18'], ['Almanaque', '18', 'a.example']] },
  'pages/_hand-out': { almanac: [['Almanaque', true], ['Almanaque', false]], editionOf: [['18']] },
  'pages/_signs': { canMiss: [['la autoridad']] },
  'pages/lists/_text': { ownDays: [['día 3']], cautions: [[1], [2]] },
  'service-worker/messages': {
    saving: [[1, 9]], saved: [[200, '2,1 MB', '18', 0, 3], [200, '2,1 MB', '18', 1, 3]], newEdition: [['18']], isSaved: [['18'], ['18', 60]], isAsSeen: [['18'], ['18', 60]],
  },
}; // prettier-ignore

const HOLE = /undefined|null|NaN|\[object|[{}]/;
const ENGLISH = /\b(?:the|of|and|with|your|is|are|this|from|not|step|steps)\b/i;

/** The texts of a module. */
function texts(value: unknown, path: string, said: Record<string, unknown[][]>): string[] {
  if (typeof value === 'string') return [value];
  if (typeof value === 'function') {
    assert.ok(said[path], `${path} needs values`);
    return said[path].flatMap((values) => texts((value as (...values: unknown[]) => unknown)(...values), path, said));
  }
  return Object.entries(value as object).flatMap(([name, each]) => texts(each, path === '' ? name : `${path}.${name}`, said));
}

test.each(files().filter((path) => ROOMS.test(path)))('%s', async (path) => {
  const said = SAID[path.replace(/^src\/|\.es\.ts$/g, '')] ?? {};
  const module = (await import(/* @vite-ignore */ new URL(`../../../${path}`, import.meta.url).href)) as Record<string, unknown>;
  for (const sentence of texts({ ...module }, '', said)) {
    const shown = sentence.replace(SLOT, '').replace(/\[[^\]]+\]\([\w-]+\)/g, '');
    assert.doesNotMatch(shown, HOLE);
    assert.doesNotMatch(shown, ENGLISH);
  }
});
