import type { LabelRow, Planned, TreatmentRule, TreatmentState } from '../../shared/treatments/label-row.ts';
import type { Day } from '../../shared/days/day.ts';
import type { Row } from '../rows.ts';

export const today = '2026-08-01' as Day;
const checkBy = '2027-03-01' as Day;
const place = 'United States';

/** Rows of labels as the reference of values has them, by active ingredient only. */
export const labels = {
  formicStrips: { place, lowC: 10, highC: 29.4, supers: 'label', needsBroodless: false, daysMost: 7, checkBy },
  formicPad: { place, lowC: 10, highC: 26.1, supers: 'label', needsBroodless: false, checkBy },
  amitraz: { place, supers: 'off', supersBackDays: 14, needsBroodless: false, daysMost: 56, checkBy },
  oxalicTrickled: { place, supers: 'label', needsBroodless: true, daysMost: 1, checkBy },
  thymolWafers: { place, lowC: 15, highC: 30, supers: 'off', needsBroodless: false, daysMost: 56, checkBy },
  coumaphos: { place, supers: 'off', needsBroodless: false, checkBy },
  allowed: { place, supers: 'on', needsBroodless: false, daysMost: 10, checkBy },
} as const satisfies Record<string, LabelRow>;

const plain: Planned = { start: '2026-08-10' as Day, lowC: 18, highC: 28, supersOn: false, brood: true, place, registered: 'yes' };
const planned = (other: Partial<Planned> = {}): Planned => ({ ...plain, ...other });
const day = (text: string): Day => text as Day;

const formic = 'US label of formic acid strips, 50 to 85 F; above 85 F queens and brood can die';
const amitraz = 'US label of amitraz strips 2012: 42 days, 56 at most, boxes back 14 days after';
const thymol = 'label of thymol wafers: not over 30 C, poor under 15 C, boxes off, 6 to 8 weeks';
const oxalic = 'oxalic acid, trickled: once, without brood; boxes as the label says (from memory)';
const rule = 'the written rules of judgement';

type Given = { row: keyof typeof labels; planned: Planned; today?: Day };
export const judgements: Row<Given, { state: TreatmentState; rules: TreatmentRule[] }>[] = [
  { case: 'strips at 18 to 28 C', given: { row: 'formicStrips', planned: planned() }, expect: { state: 'not-ruled-out', rules: [] }, from: formic },
  { case: 'strips at 90 F', given: { row: 'formicStrips', planned: planned({ highC: 32.22 }) }, expect: { state: 'ruled-out', rules: ['too-warm'] }, from: formic },
  { case: 'strips at 85 F, the line itself', given: { row: 'formicStrips', planned: planned({ highC: 29.444444 }) }, expect: { state: 'not-ruled-out', rules: [] }, from: formic },
  { case: 'strips at 86 F', given: { row: 'formicStrips', planned: planned({ highC: 30 }) }, expect: { state: 'ruled-out', rules: ['too-warm'] }, from: formic },
  { case: 'strips down to 50 F, the line itself', given: { row: 'formicStrips', planned: planned({ lowC: 10 }) }, expect: { state: 'not-ruled-out', rules: [] }, from: formic },
  { case: 'strips down to 49 F', given: { row: 'formicStrips', planned: planned({ lowC: 9.444444 }) }, expect: { state: 'ruled-out', rules: ['too-cold'] }, from: formic },
  { case: 'strips too cold and too warm', given: { row: 'formicStrips', planned: planned({ lowC: 5, highC: 31 }) }, expect: { state: 'ruled-out', rules: ['too-cold', 'too-warm'] }, from: formic },
  { case: 'strips with boxes on: the label decides', given: { row: 'formicStrips', planned: planned({ supersOn: true }) }, expect: { state: 'ask', rules: ['supers-by-label'] }, from: formic },
  { case: 'strips too warm, with boxes on', given: { row: 'formicStrips', planned: planned({ highC: 35, supersOn: true }) }, expect: { state: 'ruled-out', rules: ['too-warm', 'supers-by-label'] }, from: formic },
  { case: 'strips, harvest within the seven days', given: { row: 'formicStrips', planned: planned({ harvest: day('2026-08-16') }) }, expect: { state: 'ask', rules: ['harvest-by-label'] }, from: formic },
  { case: 'strips, harvest after them', given: { row: 'formicStrips', planned: planned({ harvest: day('2026-08-17') }) }, expect: { state: 'not-ruled-out', rules: [] }, from: formic },
  { case: 'older pad at 79 F, the line itself', given: { row: 'formicPad', planned: planned({ highC: 26.111111 }) }, expect: { state: 'not-ruled-out', rules: [] }, from: 'US label of an older pad, 50 to 79 F' },
  { case: 'older pad at 80 F', given: { row: 'formicPad', planned: planned({ highC: 26.666667 }) }, expect: { state: 'ruled-out', rules: ['too-warm'] }, from: 'US label of an older pad, 50 to 79 F' },
  { case: 'amitraz with boxes on', given: { row: 'amitraz', planned: planned({ supersOn: true }) }, expect: { state: 'ruled-out', rules: ['supers-on'] }, from: amitraz },
  { case: 'amitraz, boxes off', given: { row: 'amitraz', planned: planned() }, expect: { state: 'not-ruled-out', rules: [] }, from: amitraz },
  { case: 'amitraz, harvest on day 69', given: { row: 'amitraz', planned: planned({ harvest: day('2026-10-18') }) }, expect: { state: 'ruled-out', rules: ['harvest-too-soon'] }, from: amitraz },
  { case: 'amitraz, harvest on day 70', given: { row: 'amitraz', planned: planned({ harvest: day('2026-10-19') }) }, expect: { state: 'not-ruled-out', rules: [] }, from: amitraz },
  { case: 'amitraz, harvest over before', given: { row: 'amitraz', planned: planned({ harvest: day('2026-08-09') }) }, expect: { state: 'not-ruled-out', rules: [] }, from: amitraz },
  { case: 'oxalic acid with brood', given: { row: 'oxalicTrickled', planned: planned() }, expect: { state: 'ruled-out', rules: ['brood'] }, from: oxalic },
  { case: 'oxalic acid without brood', given: { row: 'oxalicTrickled', planned: planned({ brood: false }) }, expect: { state: 'not-ruled-out', rules: [] }, from: oxalic },
  { case: 'thymol at 31 C', given: { row: 'thymolWafers', planned: planned({ highC: 31 }) }, expect: { state: 'ruled-out', rules: ['too-warm'] }, from: thymol },
  { case: 'thymol at 14 C, boxes on, harvest to come', given: { row: 'thymolWafers', planned: planned({ lowC: 14, supersOn: true, harvest: day('2026-09-01') }) }, expect: { state: 'ruled-out', rules: ['too-cold', 'supers-on', 'harvest-too-soon'] }, from: thymol },
  { case: 'a row that does not say how long, harvest to come', given: { row: 'coumaphos', planned: planned({ harvest: day('2026-12-01') }) }, expect: { state: 'ask', rules: ['harvest-by-label'] }, from: 'coumaphos, length as the label says (from memory)' },
  { case: 'boxes may be on, harvest in the midst', given: { row: 'allowed', planned: planned({ supersOn: true, harvest: day('2026-08-12') }) }, expect: { state: 'not-ruled-out', rules: [] }, from: rule },
  { case: 'not checked whether registered', given: { row: 'formicStrips', planned: planned({ registered: 'not-checked' }) }, expect: { state: 'ask', rules: ['not-checked'] }, from: rule },
  { case: 'not registered, and too warm besides', given: { row: 'formicStrips', planned: planned({ registered: 'no', highC: 35 }) }, expect: { state: 'ask', rules: ['not-registered', 'too-warm'] }, from: rule },
  { case: 'no place said', given: { row: 'formicStrips', planned: planned({ place: ' ' }) }, expect: { state: 'ask', rules: ['place-not-said'] }, from: rule },
  { case: 'another place', given: { row: 'formicStrips', planned: planned({ place: 'New Zealand' }) }, expect: { state: 'ask', rules: ['other-place'] }, from: rule },
  { case: 'the place in other letters', given: { row: 'formicStrips', planned: planned({ place: '  united  STATES ' }) }, expect: { state: 'not-ruled-out', rules: [] }, from: rule },
  { case: 'read on the last day of its check-by', given: { row: 'formicStrips', planned: planned(), today: checkBy }, expect: { state: 'not-ruled-out', rules: [] }, from: rule },
  { case: 'read the day after its check-by', given: { row: 'formicStrips', planned: planned(), today: day('2027-03-02') }, expect: { state: 'ask', rules: ['past-check-by'] }, from: rule },
  { case: 'planned for a day after its check-by', given: { row: 'formicStrips', planned: planned({ start: day('2027-03-02') }) }, expect: { state: 'ask', rules: ['past-check-by'] }, from: rule },
  { case: 'all three to ask about, and ruled out besides', given: { row: 'amitraz', planned: planned({ registered: 'not-checked', place: '', supersOn: true }), today: day('2028-01-01') }, expect: { state: 'ask', rules: ['not-checked', 'place-not-said', 'past-check-by', 'supers-on'] }, from: rule },
];
