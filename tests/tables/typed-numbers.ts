import type { Row } from '../rows.ts';

const rule = 'our rule for a box';
type Read = { value: number; unit?: string } | { reason: string };

export const numbers: Row<{ text: string }, Read>[] = [
  { case: 'point', given: { text: '1.5' }, expect: { value: 1.5 }, from: rule },
  { case: 'comma', given: { text: '1,5' }, expect: { value: 1.5 }, from: rule },
  { case: 'mixed fraction', given: { text: '1 1/2' }, expect: { value: 1.5 }, from: rule },
  { case: 'fraction sign', given: { text: '1½' }, expect: { value: 1.5 }, from: rule },
  { case: 'fraction alone', given: { text: '3/4' }, expect: { value: 0.75 }, from: rule },
  { case: 'fraction slash', given: { text: '1\u20442' }, expect: { value: 0.5 }, from: rule },
  { case: 'hyphen as minus', given: { text: '-3' }, expect: { value: -3 }, from: rule },
  { case: 'true minus', given: { text: '\u22123' }, expect: { value: -3 }, from: rule },
  { case: 'minus and fraction', given: { text: '-1½' }, expect: { value: -1.5 }, from: rule },
  { case: 'minus nought is nought', given: { text: '-0' }, expect: { value: 0 }, from: rule },
  { case: 'stray spaces', given: { text: ' \t12 \u00a0' }, expect: { value: 12 }, from: rule },
  { case: 'no figure before the point', given: { text: '.5' }, expect: { value: 0.5 }, from: rule },
  { case: 'nought and three decimals', given: { text: '0,125' }, expect: { value: 0.125 }, from: rule },
  { case: 'four figures cannot be a group', given: { text: '1234,567' }, expect: { value: 1234.567 }, from: rule },
  { case: 'printed group, narrow space', given: { text: '1\u202f500' }, expect: { value: 1500 }, from: rule },
  { case: 'printed group, non-breaking space', given: { text: '12\u00a0500,5' }, expect: { value: 12500.5 }, from: rule },
  { case: 'printed group, larger', given: { text: '25\u202f000' }, expect: { value: 25000 }, from: rule },
  { case: 'a printed group does not begin with 0', given: { text: '0\u202f125' }, expect: { reason: 'two-numbers' }, from: rule },
  { case: 'fifteen figures can be held', given: { text: '123456789012345' }, expect: { value: 123456789012345 }, from: rule },
  { case: 'unit', given: { text: '5 kg' }, expect: { value: 5, unit: 'kg' }, from: rule },
  { case: 'unit, no space, full stop', given: { text: '5lb.' }, expect: { value: 5, unit: 'lb' }, from: rule },
  { case: 'unit of two words', given: { text: '1½ US gal' }, expect: { value: 1.5, unit: 'us gal' }, from: rule },
  { case: 'nothing', given: { text: '' }, expect: { reason: 'empty' }, from: rule },
  { case: 'only spaces', given: { text: ' \u00a0' }, expect: { reason: 'empty' }, from: rule },
  { case: 'fifteen hundred or one and a half, comma', given: { text: '1,500' }, expect: { reason: 'ambiguous-mark' }, from: rule },
  { case: 'fifteen hundred or one and a half, point', given: { text: '1.500' }, expect: { reason: 'ambiguous-mark' }, from: rule },
  { case: 'three figures before', given: { text: '455.500' }, expect: { reason: 'ambiguous-mark' }, from: rule },
  { case: 'with a minus', given: { text: '-1,500' }, expect: { reason: 'ambiguous-mark' }, from: rule },
  { case: 'with a unit', given: { text: '1,500 kg' }, expect: { reason: 'ambiguous-mark' }, from: rule },
  { case: 'millions', given: { text: '1,500,000' }, expect: { reason: 'thousands-mark' }, from: rule },
  { case: 'both marks', given: { text: '1.500,5' }, expect: { reason: 'thousands-mark' }, from: rule },
  { case: 'Swiss mark', given: { text: '1’500' }, expect: { reason: 'thousands-mark' }, from: rule },
  { case: 'ordinary space within', given: { text: '1 500' }, expect: { reason: 'two-numbers' }, from: rule },
  { case: 'two numbers', given: { text: '9 300' }, expect: { reason: 'two-numbers' }, from: rule },
  { case: 'improper part', given: { text: '1 3/2' }, expect: { reason: 'two-numbers' }, from: rule },
  { case: 'over nought', given: { text: '1/0' }, expect: { reason: 'not-a-number' }, from: rule },
  { case: 'half typed', given: { text: '5.' }, expect: { reason: 'not-a-number' }, from: rule },
  { case: 'range', given: { text: '3-5' }, expect: { reason: 'not-a-number' }, from: rule },
  { case: 'exponent', given: { text: '1e5' }, expect: { reason: 'not-a-number' }, from: rule },
  { case: 'word', given: { text: 'ten' }, expect: { reason: 'not-a-number' }, from: rule },
  { case: 'letter O', given: { text: '1O' }, expect: { reason: 'unknown-unit' }, from: rule },
  { case: 'unit of another field', given: { text: '20 °C' }, expect: { reason: 'unknown-unit' }, from: rule },
  { case: 'more figures than can be held', given: { text: '1234567890123456' }, expect: { reason: 'too-many-digits' }, from: rule },
];

export const lists: Row<{ text: string }, { values: number[] } | { reason: string; row?: number }>[] = [
  { case: 'column', given: { text: '452\n455.5\n449\n' }, expect: { values: [452, 455.5, 449] }, from: rule },
  { case: 'Windows line ends', given: { text: '452\r\n455,5\r\n' }, expect: { values: [452, 455.5] }, from: rule },
  { case: 'row of a spreadsheet', given: { text: '452\t455.5\t449' }, expect: { values: [452, 455.5, 449] }, from: rule },
  { case: 'semicolons', given: { text: '1,5; 2; 2,5' }, expect: { values: [1.5, 2, 2.5] }, from: rule },
  { case: 'commas and spaces', given: { text: '452, 455, 449' }, expect: { reason: 'comma-list', row: 1 }, from: rule },
  { case: 'commas alone', given: { text: '452,455,449' }, expect: { reason: 'comma-list', row: 1 }, from: rule },
  { case: 'decimals and commas', given: { text: '4.5,3.2' }, expect: { reason: 'comma-list', row: 1 }, from: rule },
  { case: 'a bad row is named', given: { text: '452\n\n45x\n449' }, expect: { reason: 'unknown-unit', row: 2 }, from: rule },
  { case: 'blank', given: { text: ' \n ; ' }, expect: { reason: 'empty' }, from: rule },
];

export const pastedRows: Row<{ text: string; fewest: number; most: number }, { rows: string[][] } | { reason: string; row?: number }>[] = [
  { case: 'tabs', given: { text: 'A\t9\t300\nB\t4\t310\n', fewest: 3, most: 3 }, expect: { rows: [['A', '9', '300'], ['B', '4', '310']] }, from: rule },
  { case: 'heading', given: { text: 'Hive\tMites\tBees\nA\t9\t300', fewest: 3, most: 3 }, expect: { rows: [['A', '9', '300']] }, from: rule },
  { case: 'semicolons', given: { text: 'A; 9; 300', fewest: 3, most: 3 }, expect: { rows: [['A', '9', '300']] }, from: rule },
  { case: 'empty columns behind', given: { text: '40\t54\t\t', fewest: 2, most: 2 }, expect: { rows: [['40', '54']] }, from: rule },
  { case: 'a short row is named', given: { text: 'A\t9\t300\nB\t4', fewest: 3, most: 3 }, expect: { reason: 'wrong-fields', row: 2 }, from: rule },
  { case: 'commas', given: { text: 'A,9,300', fewest: 3, most: 3 }, expect: { reason: 'comma-list', row: 1 }, from: rule },
  { case: 'one line of one word', given: { text: 'Hive', fewest: 2, most: 2 }, expect: { reason: 'wrong-fields', row: 1 }, from: rule },
  { case: 'one line without a figure is a row, not a heading', given: { text: 'Hive\tA', fewest: 2, most: 2 }, expect: { rows: [['Hive', 'A']] }, from: rule },
  { case: 'nothing', given: { text: '\n \n', fewest: 1, most: 9 }, expect: { reason: 'empty' }, from: rule },
];

export const shown: Row<{ value: number; places?: number; digits?: number }, { words: string }>[] = [
  { case: 'two decimals', given: { value: 2.9963, places: 2 }, expect: { words: '3.00' }, from: rule },
  { case: 'thousands', given: { value: 1234567.5, places: 1 }, expect: { words: '1,234,567.5' }, from: rule },
  { case: 'no thousands within decimals', given: { value: 0.123456, places: 6 }, expect: { words: '0.123456' }, from: rule },
  { case: 'no minus nought', given: { value: -0.001, places: 2 }, expect: { words: '0.00' }, from: rule },
  { case: 'three significant', given: { value: 1626.47, digits: 3 }, expect: { words: '1,630' }, from: rule },
  { case: 'three significant, small', given: { value: 0.0012345, digits: 3 }, expect: { words: '0.00123' }, from: rule },
  { case: 'three significant, rounded up a power', given: { value: 9.999, digits: 3 }, expect: { words: '10.0' }, from: rule },
  { case: 'nought', given: { value: 0, digits: 3 }, expect: { words: '0' }, from: rule },
  { case: 'no exponent', given: { value: 1e22, places: 0 }, expect: { words: '10,000,000,000,000,000,000,000' }, from: rule },
];

export const dataValues: Row<{ value: number }, { text: string }>[] = [
  { case: 'third', given: { value: 1 / 3 }, expect: { text: '0.3333333333' }, from: rule },
  { case: 'sum of tenths', given: { value: 0.1 + 0.2 }, expect: { text: '0.3' }, from: rule },
  { case: 'small', given: { value: 1.5e-9 }, expect: { text: '0.0000000015' }, from: rule },
  { case: 'large', given: { value: 1e22 }, expect: { text: '10000000000000000000000' }, from: rule },
  { case: 'large with figures', given: { value: 1.234e21 }, expect: { text: '1234000000000000000000' }, from: rule },
  { case: 'minus nought', given: { value: -0 }, expect: { text: '0' }, from: rule },
  { case: 'minus', given: { value: -2.5 }, expect: { text: '-2.5' }, from: rule },
];
