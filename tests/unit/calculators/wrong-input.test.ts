// Wrong and odd input in every box of every calculator: it stays as typed, and gives a finite value or a sentence that says what is wrong.
import assert from 'node:assert/strict';
import { test, vi } from 'vitest';
import type { Calculator } from '../../../src/calculators/form/calculator.ts';
import { calculators } from '../../../src/schemas/calculators.ts';

const defined = vi.hoisted(() => new Map<string, Calculator<Record<string, unknown>, unknown>>());
vi.mock('../../../src/calculators/form/calculator.ts', () => ({
  defineCalculator: (tag: string, calculator: Calculator<Record<string, unknown>, unknown>) => defined.set(tag, calculator),
}));

/** As much of an input, of a row and of a form as the fields read. */
class Box {
  value = '';
  defaultValue = '';
  dataset = {};
  form: unknown = null;
  name: string;
  constructor(name: string) {
    this.name = name;
  }
}
vi.stubGlobal('HTMLInputElement', Box);
vi.stubGlobal('HTMLTextAreaElement', class {});
vi.stubGlobal('document', { documentElement: { lang: 'en-US', dataset: { zone: 'America/New_York' } } });

function formOf(units: 'us' | 'metric', typed: string): { form: HTMLFormElement; boxes: Map<string, Box> } {
  const boxes = new Map<string, Box>();
  const boxOf = (name: string): Box => {
    const known = boxes.get(name);
    if (known) return known;
    const box = Object.assign(new Box(name), { value: name.endsWith('-list') ? '' : typed, form });
    boxes.set(name, box);
    return box;
  };
  const row = { querySelectorAll: () => [...boxes.values()] };
  const form = {
    closest: () => ({ dataset: { units } }),
    elements: { namedItem: () => ({ value: '' }) },
    querySelector: () => ({ textContent: '' }),
    querySelectorAll: (selector: string) => (selector.startsWith('[data-row-of') ? [row] : [boxOf(/"(.+)"/.exec(selector)![1]!)]),
  };
  return { form: form as unknown as HTMLFormElement, boxes };
}

const odd = [
  '', '   ', 'abc', '-3', '–3', '0', '-0', '0.0', '1e9', '1e400', '9'.repeat(20), '999999999', '½', '5½', '1 1/2', '1/0', '1,5', '1,000', '1.000',
  '1,000,000', '3 lb extra', '3;4\t5\n6', '3,,4', '..', 'NaN', 'Infinity', 'undefined', '<b>x</b>', '🐝', '٣', '2026-13-45', '30 February', '4/5/26', '1-2', '18 April 2026',
]; // prettier-ignore

const numbersIn = (value: unknown): number[] =>
  typeof value === 'number' ? [value] : typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];

for (const { slug } of calculators)
  test(`${slug}: every odd text in every box stays, and is a finite value or has its sentence`, async () => {
    await import(`../../../src/calculators/${slug}/form.ts`);
    const calculator = [...defined.values()].at(-1)!;
    let [sentences, values] = [0, 0];
    for (const [name, field] of Object.entries(calculator.fields))
      for (const units of ['us', 'metric'] as const)
        for (const typed of odd) {
          const { form, boxes } = formOf(units, typed);
          const reading = field.read(form, name);
          const where = `${name} in ${units}: ${JSON.stringify(typed)}`;
          for (const box of boxes.values()) if (!box.name.endsWith('-list')) assert.equal(box.value, typed, where);
          if ('value' in reading) {
            values += 1;
            for (const number of numbersIn(reading.value)) assert.ok(Number.isFinite(number), where);
            continue;
          }
          sentences += 1;
          assert.ok(reading.faults.length > 0, where);
          for (const { words, fixes = [] } of reading.faults) {
            const own = [words, ...fixes].join(' ').replaceAll(typed.trim() || '\n', '');
            assert.match(words, /\.$/, where);
            assert.doesNotMatch(own, /NaN|Infinity|undefined|null|\[object/, `${where}: ${words}`);
          }
        }
    assert.ok(sentences > 20 && values > 0, `${sentences} sentences and ${values} values`);
  });
