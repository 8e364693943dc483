/* Form field of colonies with the mites and bees that were counted, and the sentence for a sample that has no rate. */
import { mostBeesInSample, mostMitesInSample, type SampleReason } from '../../../shared/mites/rate.ts';
import { formatNumber } from '../../../shared/numbers/show-number.ts';
import { boxOf, type FormError } from './field.ts';
import { count, label } from './kind.ts';
import { inRow } from './rows.en.ts';
import { rows } from './rows.ts';
import * as text from './colony-rows.en.ts';

export const colonyRows = (most: number) =>
  rows({
    columns: { label, mites: count(text.mitesCounted), bees: count(text.beesInSample) },
    marks: [':', '/'],
    word: text.colony,
    most,
    shape: { numbers: 2, least: 1, whole: true, numberedNames: true },
    such: 'A 12 300',
  });

const whole = (value: number): string => formatNumber(value, { places: 0 });

/** What a form says of a sample. The share of mites that a wash finds is no part of it. */
export type SampleFault = Exclude<SampleReason, 'impossible-recovery'> | 'no-samples';

const SAYS: Readonly<Record<SampleFault, readonly [box: string, words: string]>> = {
  'no-samples': ['mites', text.noMites],
  'no-bees': ['bees', text.noBees],
  'bees-not-whole': ['bees', text.wholeBees],
  'mites-not-whole': ['mites', text.wholeMites],
  'mites-negative': ['mites', text.mitesUnderZero],
  'too-many': ['mites', text.tooMany(whole(mostMitesInSample), whole(mostBeesInSample))],
};

/** `row` counts from 1. With one colony alone the sentence does not number it. */
export function sampleFault(form: HTMLFormElement, reason: SampleFault, row = 1): FormError {
  const [name, says] = SAYS[reason];
  const many = form.querySelectorAll('[data-row-of]').length > 1;
  return { box: boxOf(form, name, row - 1), words: many ? inRow(text.colony, row, says) : says };
}
