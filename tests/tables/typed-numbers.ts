import type { RowShape } from '../../shared/numbers/typed-rows.ts';
import type { SourcedRow } from '../rows.ts';

const rule = { from: 'our rule for a box', basis: 'rule' } as const;
type Read = { value: number; unit?: string } | { reason: string };

export const numbers: SourcedRow<{ text: string }, Read>[] = [
  { case: 'point', given: { text: '1.5' }, expect: { value: 1.5 }, ...rule },
  { case: 'comma', given: { text: '1,5' }, expect: { value: 1.5 }, ...rule },
  { case: 'mixed fraction', given: { text: '1 1/2' }, expect: { value: 1.5 }, ...rule },
  { case: 'fraction sign', given: { text: '1½' }, expect: { value: 1.5 }, ...rule },
  { case: 'fraction alone', given: { text: '3/4' }, expect: { value: 0.75 }, ...rule },
  { case: 'fraction slash', given: { text: '1\u20442' }, expect: { value: 0.5 }, ...rule },
  { case: 'hyphen as minus', given: { text: '-3' }, expect: { value: -3 }, ...rule },
  { case: 'true minus', given: { text: '\u22123' }, expect: { value: -3 }, ...rule },
  { case: 'minus and fraction', given: { text: '-1½' }, expect: { value: -1.5 }, ...rule },
  { case: 'minus nought is nought', given: { text: '-0' }, expect: { value: 0 }, ...rule },
  { case: 'stray spaces', given: { text: ' \t12 \u00a0' }, expect: { value: 12 }, ...rule },
  { case: 'no figure before the point', given: { text: '.5' }, expect: { value: 0.5 }, ...rule },
  { case: 'nought and three decimals', given: { text: '0,125' }, expect: { value: 0.125 }, ...rule },
  { case: 'four figures cannot be a group', given: { text: '1234,567' }, expect: { value: 1234.567 }, ...rule },
  { case: 'printed group, narrow space', given: { text: '1\u202f500' }, expect: { value: 1500 }, ...rule },
  { case: 'printed group, non-breaking space', given: { text: '12\u00a0500,5' }, expect: { value: 12500.5 }, ...rule },
  { case: 'printed group, larger', given: { text: '25\u202f000' }, expect: { value: 25000 }, ...rule },
  { case: 'a printed group does not begin with 0', given: { text: '0\u202f125' }, expect: { reason: 'two-numbers' }, ...rule },
  { case: 'fifteen figures can be held', given: { text: '123456789012345' }, expect: { value: 123456789012345 }, ...rule },
  { case: 'unit', given: { text: '5 kg' }, expect: { value: 5, unit: 'kg' }, ...rule },
  { case: 'unit, no space, full stop', given: { text: '5lb.' }, expect: { value: 5, unit: 'lb' }, ...rule },
  { case: 'unit of two words', given: { text: '1½ US gal' }, expect: { value: 1.5, unit: 'us gal' }, ...rule },
  { case: 'nothing', given: { text: '' }, expect: { reason: 'empty' }, ...rule },
  { case: 'only spaces', given: { text: ' \u00a0' }, expect: { reason: 'empty' }, ...rule },
  { case: 'fifteen hundred or one and a half, comma', given: { text: '1,500' }, expect: { reason: 'ambiguous-mark' }, ...rule },
  { case: 'fifteen hundred or one and a half, point', given: { text: '1.500' }, expect: { reason: 'ambiguous-mark' }, ...rule },
  { case: 'three figures before', given: { text: '455.500' }, expect: { reason: 'ambiguous-mark' }, ...rule },
  { case: 'with a minus', given: { text: '-1,500' }, expect: { reason: 'ambiguous-mark' }, ...rule },
  { case: 'with a unit', given: { text: '1,500 kg' }, expect: { reason: 'ambiguous-mark' }, ...rule },
  { case: 'millions', given: { text: '1,500,000' }, expect: { reason: 'thousands-mark' }, ...rule },
  { case: 'both marks', given: { text: '1.500,5' }, expect: { reason: 'thousands-mark' }, ...rule },
  { case: 'Swiss mark', given: { text: '1’500' }, expect: { reason: 'thousands-mark' }, ...rule },
  { case: 'ordinary space within', given: { text: '1 500' }, expect: { reason: 'two-numbers' }, ...rule },
  { case: 'two numbers', given: { text: '9 300' }, expect: { reason: 'two-numbers' }, ...rule },
  { case: 'improper part', given: { text: '1 3/2' }, expect: { reason: 'two-numbers' }, ...rule },
  { case: 'over nought', given: { text: '1/0' }, expect: { reason: 'not-a-number' }, ...rule },
  { case: 'half typed', given: { text: '5.' }, expect: { reason: 'not-a-number' }, ...rule },
  { case: 'range', given: { text: '3-5' }, expect: { reason: 'not-a-number' }, ...rule },
  { case: 'exponent', given: { text: '1e5' }, expect: { reason: 'not-a-number' }, ...rule },
  { case: 'word', given: { text: 'ten' }, expect: { reason: 'not-a-number' }, ...rule },
  { case: 'letter O', given: { text: '1O' }, expect: { reason: 'unknown-unit' }, ...rule },
  { case: 'unit of another field', given: { text: '20 °C' }, expect: { reason: 'unknown-unit' }, ...rule },
  { case: 'more figures than can be held', given: { text: '1234567890123456' }, expect: { reason: 'too-many-digits' }, ...rule },
];

export const lists: SourcedRow<{ text: string; mark?: ',' }, { values: number[] } | { reason: string; row?: number }>[] = [
  { case: 'column', given: { text: '452\n455.5\n449\n' }, expect: { values: [452, 455.5, 449] }, ...rule },
  { case: 'Windows line ends', given: { text: '452\r\n455,5\r\n', mark: ',' }, expect: { values: [452, 455.5] }, ...rule },
  { case: 'row of a spreadsheet', given: { text: '452\t455.5\t449' }, expect: { values: [452, 455.5, 449] }, ...rule },
  { case: 'semicolons', given: { text: '1,5; 2; 2,5', mark: ',' }, expect: { values: [1.5, 2, 2.5] }, ...rule },
  { case: 'commas and spaces', given: { text: '452, 455, 449' }, expect: { values: [452, 455, 449] }, ...rule },
  { case: 'commas alone', given: { text: '452,455,449' }, expect: { values: [452, 455, 449] }, ...rule },
  { case: 'two of three digits', given: { text: '452,455' }, expect: { values: [452, 455] }, ...rule },
  { case: 'decimals and commas', given: { text: '4.5,3.2' }, expect: { values: [4.5, 3.2] }, ...rule },
  { case: 'blanks', given: { text: '452 455.5 449' }, expect: { values: [452, 455.5, 449] }, ...rule },
  { case: 'mixed', given: { text: '452, 455\t449;450\n451' }, expect: { values: [452, 455, 449, 450, 451] }, ...rule },
  { case: 'a name before each', given: { text: 'A 452\nPackage\t455\nC; 449' }, expect: { values: [452, 455, 449] }, ...rule },
  { case: 'one comma, where a decimal has a point', given: { text: '452,5' }, expect: { reason: 'comma-list', row: 1 }, ...rule },
  { case: 'one comma, where a decimal has a comma', given: { text: '452,5', mark: ',' }, expect: { values: [452.5] }, ...rule },
  { case: 'commas and decimal commas', given: { text: '452,5, 449,5', mark: ',' }, expect: { values: [452.5, 449.5] }, ...rule },
  { case: 'commas alone, where a decimal has a comma', given: { text: '452,455,449', mark: ',' }, expect: { reason: 'comma-list', row: 1 }, ...rule },
  { case: 'a comma that may part thousands', given: { text: '1,361, 1,350' }, expect: { reason: 'ambiguous-mark', row: 1 }, ...rule },
  { case: 'a blank that may part thousands', given: { text: '1 361' }, expect: { reason: 'two-numbers', row: 1 }, ...rule },
  { case: 'a bad row is named', given: { text: '452\n\n45x\n449' }, expect: { reason: 'unknown-unit', row: 2 }, ...rule },
  { case: 'blank', given: { text: ' \n ; ' }, expect: { reason: 'empty' }, ...rule },
];

type Pasted = [label: string, ...numbers: string[]][];
const mites = { numbers: 2, least: 1, whole: true, numberedNames: true };
const pairs = { numbers: 2, whole: false, numberedNames: false };

export const pastedRows: SourcedRow<{ text: string; shape: RowShape }, { rows: Pasted } | { reason: string; row?: number }>[] = [
  { case: 'tabs', given: { text: 'A\t9\t300\nB\t4\t310\n', shape: mites }, expect: { rows: [['A', '9', '300'], ['B', '4', '310']] }, ...rule },
  { case: 'heading', given: { text: 'Hive\tMites\tBees\nA\t9\t300', shape: mites }, expect: { rows: [['A', '9', '300']] }, ...rule },
  { case: 'heading with digits', given: { text: 'Hive,Mites,Bees (about 300)\nA,9,300', shape: mites }, expect: { rows: [['A', '9', '300']] }, ...rule },
  { case: 'semicolons', given: { text: 'A; 9; 300', shape: mites }, expect: { rows: [['A', '9', '300']] }, ...rule },
  { case: 'commas', given: { text: 'A,12,300', shape: mites }, expect: { rows: [['A', '12', '300']] }, ...rule },
  { case: 'blanks', given: { text: 'A 12 300', shape: mites }, expect: { rows: [['A', '12', '300']] }, ...rule },
  { case: 'no name', given: { text: '12 300\n12,300\n12\t300\n12;300', shape: mites }, expect: { rows: [['', '12', '300'], ['', '12', '300'], ['', '12', '300'], ['', '12', '300']] }, ...rule },
  { case: 'mixed', given: { text: 'A,12 300\nB\t12,300\nC; 12 300\nD 12/300', shape: mites }, expect: { rows: [['A', '12', '300'], ['B', '12', '300'], ['C', '12', '300'], ['D', '12', '300']] }, ...rule },
  { case: 'a name of several words', given: { text: 'Hive by the oak 12 300', shape: mites }, expect: { rows: [['Hive by the oak', '12', '300']] }, ...rule },
  { case: 'a name that is a number', given: { text: 'Hive 3 12 300\n3,12,300', shape: mites }, expect: { rows: [['Hive 3', '12', '300'], ['3', '12', '300']] }, ...rule },
  { case: 'a name and mites alone', given: { text: 'A 12', shape: mites }, expect: { rows: [['A', '12']] }, ...rule },
  { case: 'one number alone', given: { text: 'A 9 300\n\n12', shape: mites }, expect: { reason: 'wrong-fields', row: 3 }, ...rule },
  { case: 'a wrong number goes to its box', given: { text: 'A\tx\t300', shape: mites }, expect: { rows: [['A', 'x', '300']] }, ...rule },
  { case: 'empty columns behind', given: { text: '40\t54\t\t', shape: pairs }, expect: { rows: [['', '40', '54']] }, ...rule },
  { case: 'days', given: { text: '40/54\n40 54\n40,54\n−2; 8\n2026-04-18\t40\t54\nApril 18 40 54', shape: pairs }, expect: { reason: 'wrong-fields', row: 6 }, ...rule },
  { case: 'days with a date before them', given: { text: '2026-04-18\t40\t54\n4/19/2026 41.5 -3', shape: pairs }, expect: { rows: [['2026-04-18', '40', '54'], ['4/19/2026', '41.5', '-3']] }, ...rule },
  { case: 'decimal commas', given: { text: '10 1,36\n10;1,36\n10\t1,36', shape: pairs }, expect: { rows: [['', '10', '1,36'], ['', '10', '1,36'], ['', '10', '1,36']] }, ...rule },
  { case: 'one comma between two numbers', given: { text: '10,3\n10, 3\n10,1.36', shape: pairs }, expect: { rows: [['', '10', '3'], ['', '10', '3'], ['', '10', '1.36']] }, ...rule },
  { case: 'an order as people write it', given: { text: '10 x 3 lb\n4×2', shape: pairs }, expect: { rows: [['', '10', '3lb'], ['', '4', '2']] }, ...rule },
  { case: 'three numbers for two', given: { text: '40 47 54', shape: pairs }, expect: { reason: 'wrong-fields', row: 1 }, ...rule },
  { case: 'one line of one word', given: { text: 'Hive', shape: pairs }, expect: { reason: 'wrong-fields', row: 1 }, ...rule },
  { case: 'nothing', given: { text: '\n \n', shape: pairs }, expect: { reason: 'empty' }, ...rule },
];

export const shown: SourcedRow<{ value: number; places?: number; digits?: number }, { words: string }>[] = [
  { case: 'two decimals', given: { value: 2.9963, places: 2 }, expect: { words: '3.00' }, ...rule },
  { case: 'thousands', given: { value: 1234567.5, places: 1 }, expect: { words: '1,234,567.5' }, ...rule },
  { case: 'no thousands within decimals', given: { value: 0.123456, places: 6 }, expect: { words: '0.123456' }, ...rule },
  { case: 'no minus nought', given: { value: -0.001, places: 2 }, expect: { words: '0.00' }, ...rule },
  { case: 'three significant', given: { value: 1626.47, digits: 3 }, expect: { words: '1,630' }, ...rule },
  { case: 'three significant, small', given: { value: 0.0012345, digits: 3 }, expect: { words: '0.00123' }, ...rule },
  { case: 'three significant, rounded up a power', given: { value: 9.999, digits: 3 }, expect: { words: '10.0' }, ...rule },
  { case: 'nought', given: { value: 0, digits: 3 }, expect: { words: '0' }, ...rule },
  { case: 'no exponent', given: { value: 1e22, places: 0 }, expect: { words: '10,000,000,000,000,000,000,000' }, ...rule },
];

export const dataValues: SourcedRow<{ value: number }, { text: string }>[] = [
  { case: 'third', given: { value: 1 / 3 }, expect: { text: '0.3333333333' }, ...rule },
  { case: 'sum of tenths', given: { value: 0.1 + 0.2 }, expect: { text: '0.3' }, ...rule },
  { case: 'small', given: { value: 1.5e-9 }, expect: { text: '0.0000000015' }, ...rule },
  { case: 'large', given: { value: 1e22 }, expect: { text: '10000000000000000000000' }, ...rule },
  { case: 'large with figures', given: { value: 1.234e21 }, expect: { text: '1234000000000000000000' }, ...rule },
  { case: 'minus nought', given: { value: -0 }, expect: { text: '0' }, ...rule },
  { case: 'minus', given: { value: -2.5 }, expect: { text: '-2.5' }, ...rule },
];
