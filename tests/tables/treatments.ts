import type { LabelRow, Planned, TreatmentRule, TreatmentState, WarmthLimit } from '../../shared/treatments/label-row.ts';
import { fahrenheitToCelsius } from '../../shared/units/temperature.ts';
import type { Day } from '../../shared/days/day.ts';
import type { Basis, SourcedRow } from '../rows.ts';
import { aDay } from '../days.ts';

export const today = aDay('2026-08-01');
const checkBy = aDay('2027-03-01');
const place = 'United States';
const F = fahrenheitToCelsius;

const opened = { place, seen: 'itself', registration: '1-1', labelDate: aDay('2024-05-01'), forbidsBrood: false, poorWithBrood: false, limits: [] as WarmthLimit[], poorOutside: [] as WarmthLimit[], checkBy } as const;

/** Label rows, by active ingredient only. Number and date are invented, so that each rule can be tested alone. */
export const labels = {
  formicStrips: { ...opened, limits: [{ of: 'daily-high', leastC: 10, mostC: 29.5, when: 'on the day it goes in' }], supers: 'label', daysMost: 7 },
  amitraz: { ...opened, supers: 'off', supersBackDays: 14, daysMost: 56 },
  amitrazQuoted: { ...opened, seen: 'quoted', supers: 'off', supersBackDays: 14, daysMost: 56 },
  oxalicTrickled: { ...opened, supers: 'label', poorWithBrood: true, daysMost: 1 },
  broodForbidden: { ...opened, supers: 'label', forbidsBrood: true, poorWithBrood: true, daysMost: 1 },
  thymolWafers: { ...opened, limits: [{ of: 'daily-high', mostC: 30 }], poorOutside: [{ of: 'mean', leastC: 15 }], supers: 'off', daysMost: 56 },
  meanForbidden: { ...opened, limits: [{ of: 'mean', leastC: 15, mostC: 21 }], supers: 'on', daysMost: 30 },
  anyHour: { ...opened, limits: [{ of: 'any-time', leastC: 5, mostC: 32 }], supers: 'on', daysMost: 10 },
  fromMemory: { ...opened, seen: 'memory', supers: 'label' },
  notOpened: { ...opened, seen: 'not-opened', supers: 'label' },
  superseded: { ...opened, superseded: true, limits: [{ of: 'daily-high', leastC: 7.2, mostC: 35 }], supers: 'off' },
  withoutNumber: { ...opened, registration: undefined!, supers: 'label' },
  withoutDate: { ...opened, labelDate: undefined!, supers: 'label' },
  noLength: { ...opened, supers: 'off' },
  allowed: { ...opened, supers: 'on', daysMost: 10 },
} as const satisfies Record<string, LabelRow>;

const plain: Planned = { start: aDay('2026-08-10'), lowestHighC: 18, highestHighC: 28, supersOn: false, brood: true, place, registered: 'yes' };
const planned = (other: Partial<Planned> = {}): Planned => ({ ...plain, ...other });
const day = (text: string): Day => aDay(text);

const formic = { from: 'British leaflet of formic strips, Vm 40476/4000: daytime highs of 10 to 29.5 C on the day of application, 7 days', basis: 'derived' } as const;
const nights = { from: "the maker's European guide of 23 September 2014: the limits are of outside daytime highs", basis: 'derived' } as const;
const amitraz = { from: 'full registration of amitraz strips, 11 March 2013, EPA Reg. No. 87243-1: 42 days, 56 at most, boxes back 14 days after', basis: 'derived' } as const;
const thymol = { from: 'Belgian leaflet of thymol wafers: not where the highest temperature of the day is above 30 C', basis: 'derived' } as const;
const mean = { from: 'Austrian leaflet of thymol wafers (2014): may work too little where the average is under 15 C', basis: 'derived' } as const;
const oxalic = { from: 'Gregorc and Planinc 2001, Apidologie 32:333: 39 to 52 % with brood, 99 % without; no label read forbids brood', basis: 'derived' } as const;
const rule = { from: 'the written rules of judgement', basis: 'rule' } as const;

type Given = { row: keyof typeof labels; planned: Planned; today?: Day };
export const judgements: SourcedRow<Given, { state: TreatmentState; rules: TreatmentRule[] }>[] = [
  { case: 'strips at highs of 18 to 28 C', given: { row: 'formicStrips', planned: planned() }, expect: { state: 'nothing-found', rules: [] }, ...formic },
  { case: 'strips at 91 F', given: { row: 'formicStrips', planned: planned({ highestHighC: F(91) }) }, expect: { state: 'ruled-out', rules: ['too-warm'] }, ...formic },
  { case: 'strips at 85 F, the line as it is printed in F', given: { row: 'formicStrips', planned: planned({ highestHighC: F(85) }) }, expect: { state: 'nothing-found', rules: [] }, ...formic },
  { case: 'strips at 86 F', given: { row: 'formicStrips', planned: planned({ highestHighC: F(86) }) }, expect: { state: 'ruled-out', rules: ['too-warm'] }, ...formic },
  { case: 'strips, the coolest day reaches 50 F, the line itself', given: { row: 'formicStrips', planned: planned({ lowestHighC: F(50) }) }, expect: { state: 'nothing-found', rules: [] }, ...formic },
  { case: 'strips, the coolest day reaches 49 F', given: { row: 'formicStrips', planned: planned({ lowestHighC: F(49) }) }, expect: { state: 'ruled-out', rules: ['too-cold'] }, ...formic },
  { case: 'strips in a September week: nights of 46 F, highs of 64 to 75 F', given: { row: 'formicStrips', planned: planned({ lowestHighC: F(64), highestHighC: F(75), coldestC: F(46) }) }, expect: { state: 'nothing-found', rules: [] }, ...nights },
  { case: 'strips with nights of frost and highs within', given: { row: 'formicStrips', planned: planned({ coldestC: -3, meanC: 9 }) }, expect: { state: 'nothing-found', rules: [] }, ...nights },
  { case: 'strips too cold and too warm', given: { row: 'formicStrips', planned: planned({ lowestHighC: 5, highestHighC: 31 }) }, expect: { state: 'ruled-out', rules: ['too-cold', 'too-warm'] }, ...formic },
  { case: 'strips with boxes on: the label decides', given: { row: 'formicStrips', planned: planned({ supersOn: true }) }, expect: { state: 'ask', rules: ['supers-by-label'] }, ...rule },
  { case: 'strips too warm, with boxes on', given: { row: 'formicStrips', planned: planned({ highestHighC: 35, supersOn: true }) }, expect: { state: 'ruled-out', rules: ['too-warm', 'supers-by-label'] }, ...formic },
  { case: 'strips, harvest within the seven days', given: { row: 'formicStrips', planned: planned({ harvest: day('2026-08-16') }) }, expect: { state: 'ask', rules: ['harvest-by-label'] }, ...formic },
  { case: 'strips, harvest after them', given: { row: 'formicStrips', planned: planned({ harvest: day('2026-08-17') }) }, expect: { state: 'nothing-found', rules: [] }, ...formic },
  { case: 'amitraz with boxes on', given: { row: 'amitraz', planned: planned({ supersOn: true }) }, expect: { state: 'ruled-out', rules: ['supers-on'] }, ...amitraz },
  { case: 'amitraz, boxes off', given: { row: 'amitraz', planned: planned() }, expect: { state: 'nothing-found', rules: [] }, ...amitraz },
  { case: 'amitraz, harvest on day 69', given: { row: 'amitraz', planned: planned({ harvest: day('2026-10-18') }) }, expect: { state: 'ruled-out', rules: ['harvest-too-soon'] }, ...amitraz },
  { case: 'amitraz, harvest on day 70', given: { row: 'amitraz', planned: planned({ harvest: day('2026-10-19') }) }, expect: { state: 'nothing-found', rules: [] }, ...amitraz },
  { case: 'amitraz, harvest over before', given: { row: 'amitraz', planned: planned({ harvest: day('2026-08-09') }) }, expect: { state: 'nothing-found', rules: [] }, ...amitraz },
  { case: 'a label seen only as others repeat it', given: { row: 'amitrazQuoted', planned: planned() }, expect: { state: 'ask', rules: ['only-quoted'] }, ...rule },
  { case: 'the same, boxes on: what it forbids still counts', given: { row: 'amitrazQuoted', planned: planned({ supersOn: true }) }, expect: { state: 'ruled-out', rules: ['supers-on', 'only-quoted'] }, ...rule },
  { case: 'oxalic acid with brood: allowed by its label, and works poorly', given: { row: 'oxalicTrickled', planned: planned() }, expect: { state: 'works-poorly', rules: ['poor-with-brood'] }, ...oxalic },
  { case: 'oxalic acid without brood', given: { row: 'oxalicTrickled', planned: planned({ brood: false }) }, expect: { state: 'nothing-found', rules: [] }, ...oxalic },
  { case: 'a label that forbids brood', given: { row: 'broodForbidden', planned: planned() }, expect: { state: 'ruled-out', rules: ['brood-forbidden', 'poor-with-brood'] }, ...rule },
  { case: 'thymol at 31 C', given: { row: 'thymolWafers', planned: planned({ highestHighC: 31, meanC: 22 }) }, expect: { state: 'ruled-out', rules: ['too-warm'] }, ...thymol },
  { case: 'thymol, highs within, the mean not told', given: { row: 'thymolWafers', planned: planned() }, expect: { state: 'ask', rules: ['mean-not-told'] }, ...mean },
  { case: 'thymol, a mean of 14 C', given: { row: 'thymolWafers', planned: planned({ meanC: 14 }) }, expect: { state: 'works-poorly', rules: ['poor-cold'] }, ...mean },
  { case: 'thymol, a mean of 15 C, the line itself', given: { row: 'thymolWafers', planned: planned({ meanC: 15 }) }, expect: { state: 'nothing-found', rules: [] }, ...mean },
  { case: 'thymol at 36 to 46 F: the mean must lie under 15 C', given: { row: 'thymolWafers', planned: planned({ lowestHighC: F(36), highestHighC: F(46) }) }, expect: { state: 'works-poorly', rules: ['poor-cold'] }, ...mean },
  { case: 'thymol cold, boxes on, harvest to come', given: { row: 'thymolWafers', planned: planned({ meanC: 12, supersOn: true, harvest: day('2026-09-01') }) }, expect: { state: 'ruled-out', rules: ['supers-on', 'harvest-too-soon', 'poor-cold'] }, ...rule },
  { case: 'a mean that a label forbids, not told', given: { row: 'meanForbidden', planned: planned() }, expect: { state: 'ask', rules: ['mean-not-told'] }, ...rule },
  { case: 'a mean that a label forbids, told', given: { row: 'meanForbidden', planned: planned({ meanC: 22 }) }, expect: { state: 'ruled-out', rules: ['too-warm'] }, ...rule },
  { case: 'a mean that no such week can reach', given: { row: 'meanForbidden', planned: planned({ lowestHighC: 2, highestHighC: 8 }) }, expect: { state: 'ruled-out', rules: ['too-cold'] }, ...rule },
  { case: 'any hour, the coldest not told', given: { row: 'anyHour', planned: planned() }, expect: { state: 'ask', rules: ['coldest-not-told'] }, ...rule },
  { case: 'any hour, the coldest told', given: { row: 'anyHour', planned: planned({ coldestC: 4 }) }, expect: { state: 'ruled-out', rules: ['too-cold'] }, ...rule },
  { case: 'any hour, within', given: { row: 'anyHour', planned: planned({ coldestC: 5 }) }, expect: { state: 'nothing-found', rules: [] }, ...rule },
  { case: 'any hour, the highest of the highs', given: { row: 'anyHour', planned: planned({ coldestC: 8, highestHighC: 33 }) }, expect: { state: 'ruled-out', rules: ['too-warm'] }, ...rule },
  { case: 'from memory, without limits, at 36 F', given: { row: 'fromMemory', planned: planned({ lowestHighC: F(36), highestHighC: F(46) }) }, expect: { state: 'ask', rules: ['from-memory'] }, ...rule },
  { case: 'from memory, without limits, at 91 F', given: { row: 'fromMemory', planned: planned({ highestHighC: F(91) }) }, expect: { state: 'ask', rules: ['from-memory'] }, ...rule },
  { case: 'a label that was not opened', given: { row: 'notOpened', planned: planned() }, expect: { state: 'ask', rules: ['not-opened'] }, ...rule },
  { case: 'no longer sold, within its old limits, at 91 F', given: { row: 'superseded', planned: planned({ highestHighC: F(91) }) }, expect: { state: 'ask', rules: ['superseded'] }, ...rule },
  { case: 'a label without its registration number', given: { row: 'withoutNumber', planned: planned() }, expect: { state: 'ask', rules: ['no-registration-number'] }, ...rule },
  { case: 'a label without its date', given: { row: 'withoutDate', planned: planned() }, expect: { state: 'ask', rules: ['no-label-date'] }, ...rule },
  { case: 'a row that does not say how long, harvest to come', given: { row: 'noLength', planned: planned({ harvest: day('2026-12-01') }) }, expect: { state: 'ask', rules: ['harvest-by-label'] }, ...rule },
  { case: 'boxes may be on, harvest in the midst', given: { row: 'allowed', planned: planned({ supersOn: true, harvest: day('2026-08-12') }) }, expect: { state: 'nothing-found', rules: [] }, ...rule },
  { case: 'not checked whether registered', given: { row: 'formicStrips', planned: planned({ registered: 'not-checked' }) }, expect: { state: 'ask', rules: ['not-checked'] }, ...rule },
  { case: 'not registered, and too warm besides', given: { row: 'formicStrips', planned: planned({ registered: 'no', highestHighC: 35 }) }, expect: { state: 'ask', rules: ['not-registered', 'too-warm'] }, ...rule },
  { case: 'no place said', given: { row: 'formicStrips', planned: planned({ place: ' ' }) }, expect: { state: 'ask', rules: ['place-not-said'] }, ...rule },
  { case: 'another place', given: { row: 'formicStrips', planned: planned({ place: 'New Zealand' }) }, expect: { state: 'ask', rules: ['other-place'] }, ...rule },
  { case: 'the place in other letters', given: { row: 'formicStrips', planned: planned({ place: '  united  STATES ' }) }, expect: { state: 'nothing-found', rules: [] }, ...rule },
  { case: 'read on the last day of its check-by', given: { row: 'formicStrips', planned: planned(), today: checkBy }, expect: { state: 'nothing-found', rules: [] }, ...rule },
  { case: 'read the day after its check-by', given: { row: 'formicStrips', planned: planned(), today: day('2027-03-02') }, expect: { state: 'ask', rules: ['past-check-by'] }, ...rule },
  { case: 'planned for a day after its check-by', given: { row: 'formicStrips', planned: planned({ start: day('2027-03-02') }) }, expect: { state: 'ask', rules: ['past-check-by'] }, ...rule },
  { case: 'all three to ask about, and ruled out besides', given: { row: 'amitraz', planned: planned({ registered: 'not-checked', place: '', supersOn: true }), today: day('2028-01-01') }, expect: { state: 'ask', rules: ['not-checked', 'place-not-said', 'past-check-by', 'supers-on'] }, ...rule },
];

/** Four weeks of an Ohio year, as a beekeeper writes them down: highs in F, with the nights. The weather is invented. */
const week = (start: string, lowest: number, highest: number, other: Partial<Planned> = {}): Planned =>
  planned({ start: day(start), lowestHighC: F(lowest), highestHighC: F(highest), ...other });
export const fourWeeks = {
  '7 April': week('2026-04-07', 50, 62, { coldestC: F(34) }),
  '12 September': week('2026-09-12', 64, 75, { coldestC: F(46) }),
  '10 August': week('2026-08-10', 82, 91, { coldestC: F(68) }),
  '25 November': week('2026-11-25', 36, 46, { coldestC: F(27), brood: false }),
} as const;

type Expected = { state: TreatmentState; rules: TreatmentRule[]; elsewhere?: string[] };
const notOpened: Expected = { state: 'ask', rules: ['not-opened'] };
const poorly: Expected = { state: 'ask', rules: ['not-opened', 'poor-with-brood'] };
const british = { elsewhere: ['formic-acid/strips-united-kingdom'] };
const belgian = { elsewhere: ['thymol/wafers'] };

/** Each row of the demo club in each of the four weeks, by the id of the row and the beekeeper's place. */
export const weeks: { row: string; place: string; in: Record<keyof typeof fourWeeks, Expected>; from: string; basis: Basis }[] = [
  { row: 'formic-acid/strips', place, in: { '7 April': notOpened, '12 September': notOpened, '10 August': { ...notOpened, ...british }, '25 November': { ...notOpened, ...british } }, from: `no US label opened; ${formic.from}`, basis: 'derived' },
  { row: 'formic-acid/strips-united-kingdom', place: 'United Kingdom', in: { '7 April': { state: 'ask', rules: ['no-label-date'] }, '12 September': { state: 'ask', rules: ['no-label-date'] }, '10 August': { state: 'ruled-out', rules: ['too-warm', 'no-label-date'] }, '25 November': { state: 'ruled-out', rules: ['too-cold', 'no-label-date'] } }, ...formic },
  { row: 'thymol/us', place, in: { '7 April': notOpened, '12 September': notOpened, '10 August': { ...notOpened, ...belgian }, '25 November': { ...notOpened, ...belgian } }, from: `no US label opened; ${thymol.from}; ${mean.from}`, basis: 'derived' },
  { row: 'thymol/wafers', place: 'Belgium', in: { '7 April': { state: 'ask', rules: ['mean-not-told', 'no-registration-number', 'no-label-date'] }, '12 September': { state: 'ask', rules: ['mean-not-told', 'no-registration-number', 'no-label-date'] }, '10 August': { state: 'ruled-out', rules: ['too-warm', 'mean-not-told', 'no-registration-number', 'no-label-date'] }, '25 November': { state: 'ask', rules: ['no-registration-number', 'no-label-date', 'poor-cold'] } }, from: `${thymol.from}; ${mean.from}`, basis: 'derived' },
  { row: 'oxalic-acid/trickled', place, in: { '7 April': poorly, '12 September': poorly, '10 August': poorly, '25 November': notOpened }, ...oxalic },
  { row: 'oxalic-acid/vapor', place, in: { '7 April': poorly, '12 September': poorly, '10 August': poorly, '25 November': notOpened }, from: 'Berry and others 2022: seven treatments with brood did not bring the mites under the level', basis: 'derived' },
  { row: 'oxalic-acid/sprayed', place, in: { '7 April': poorly, '12 September': poorly, '10 August': poorly, '25 November': notOpened }, ...oxalic },
  { row: 'oxalic-acid/slow-release', place, in: { '7 April': notOpened, '12 September': notOpened, '10 August': notOpened, '25 November': notOpened }, from: 'no US label opened', basis: 'derived' },
  { row: 'amitraz/strips', place, in: { '7 April': { state: 'ask', rules: ['only-quoted'] }, '12 September': { state: 'ask', rules: ['only-quoted'] }, '10 August': { state: 'ask', rules: ['only-quoted'] }, '25 November': { state: 'ask', rules: ['only-quoted'] } }, ...amitraz },
  { row: 'flumethrin', place, in: { '7 April': { state: 'ask', rules: ['other-place'] }, '12 September': { state: 'ask', rules: ['other-place'] }, '10 August': { state: 'ask', rules: ['other-place'] }, '25 November': { state: 'ask', rules: ['other-place'] } }, from: 'no row for the United States: no product known', basis: 'derived' },
  { row: 'flumethrin/strips', place: 'Canada', in: { '7 April': { state: 'ask', rules: ['only-quoted', 'no-registration-number', 'no-label-date'] }, '12 September': { state: 'ask', rules: ['only-quoted', 'no-registration-number', 'no-label-date'] }, '10 August': { state: 'ask', rules: ['only-quoted', 'no-registration-number', 'no-label-date'] }, '25 November': { state: 'ask', rules: ['only-quoted', 'no-registration-number', 'no-label-date'] } }, from: 'Canada 2017, as a bee journal repeats it', basis: 'derived' },
  ...['coumaphos/strips', 'hop-beta-acids/strips', 'tau-fluvalinate/strips', 'vadescana/us', 'l-glutamic-acid/us'].map((row) => ({ row, place, in: { '7 April': notOpened, '12 September': notOpened, '10 August': notOpened, '25 November': notOpened }, from: 'no US label opened', basis: 'derived' as const })),
];
