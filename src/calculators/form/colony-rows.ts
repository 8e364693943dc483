/* Form field of colonies with the mites and bees that were counted, and the sentence for a sample that has no rate. */
import { mostBeesInSample, mostMitesInSample, type SampleReason } from '../../../shared/mites/rate.ts';
import { formatNumber } from '../../../shared/numbers/show-number.ts';
import { boxOf, type FormError } from './field.ts';
import { count, label } from './kind.ts';
import { rows } from './rows.ts';

export const colonyRows = (most: number) =>
  rows({
    columns: { label, mites: count('how many mites were counted'), bees: count('how many bees were in the sample') },
    marks: [':', '/'],
    word: 'Colony',
    most,
    shape: { numbers: 2, least: 1, whole: true, numberedNames: true },
    such: 'A 12 300',
  });

const whole = (value: number): string => formatNumber(value, { places: 0 });

/** What a form says of a sample. The share of mites that a wash finds is no part of it. */
export type SampleFault = Exclude<SampleReason, 'impossible-recovery'> | 'no-samples';

const SAYS: Readonly<Record<SampleFault, readonly [box: string, words: string]>> = {
  'no-samples': ['mites', 'Write how many mites were counted.'],
  'no-bees': ['bees', 'A sample of 0 bees has no rate. Write how many bees were in it.'],
  'bees-not-whole': ['bees', 'Write whole bees.'],
  'mites-not-whole': ['mites', 'Write whole mites.'],
  'mites-negative': ['mites', 'Mites cannot be under 0.'],
  'too-many': ['mites', `More than ${whole(mostMitesInSample)} mites or ${whole(mostBeesInSample)} bees is not one sample.`],
};

/** `row` counts from 1. With one colony alone the sentence does not number it. */
export function sampleFault(form: HTMLFormElement, reason: SampleFault, row = 1): FormError {
  const [name, says] = SAYS[reason];
  const many = form.querySelectorAll('[data-row-of]').length > 1;
  return { box: boxOf(form, name, row - 1), words: many ? `Colony ${row}: ${says}` : says };
}
