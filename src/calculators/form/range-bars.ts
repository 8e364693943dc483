/*
 * Chart of numbers with their likely ranges, a row each, compared with one line. A row with a verdict has the mark of the verdict on its
 * range, and its word at the end. Other rows are bars with a dot. The scale begins at 0 and ends beyond the largest end.
 */
import type { Drawing, Shape } from './drawing.ts';
import { scaleStep } from './scale.ts';

export type Mark = 'act' | 'unsure' | 'below';
export type Bar = {
  readonly label: string;
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  readonly tone?: string;
  readonly verdict?: readonly [mark: Mark, words: string];
};
export type Line = { readonly at: number; readonly words: string };

const rowRem = 2;
const topRem = 1.9;
const [left, leftWithLabels, right, rightWithWords] = [3, 24, 97, 74];
const mostLetters = 8;

export function rangeBars(bars: readonly Bar[], line: Line | undefined, label: string): Drawing {
  const start = bars.length > 1 ? leftWithLabels : left;
  const finish = bars.some(({ verdict }) => verdict) ? rightWithWords : right;
  const largest = Math.max(...bars.map((bar) => bar.high ?? bar.value), line?.at ?? 0);
  const step = scaleStep(largest, finish === right ? 6 : 4);
  const end = Math.max(1, Math.ceil((largest * 1.02) / step)) * step;
  const x = (value: number): string => `${round(start + (value / end) * (finish - start))}%`;
  const floor = topRem + bars.length * rowRem;
  return {
    heightRem: floor + 2,
    label,
    shapes: [
      ...ticks(end, step).flatMap((value): Shape[] => [
        { tag: 'line', at: { class: 'hair', x1: x(value), x2: x(value), y1: `${topRem}rem`, y2: `${floor + 0.3}rem` } },
        { tag: 'text', at: { x: x(value), y: `${floor + 1.4}rem`, 'text-anchor': 'middle' }, words: String(round(value)) },
      ]),
      { tag: 'line', at: { x1: x(0), x2: x(end), y1: `${floor}rem`, y2: `${floor}rem` } },
      ...bars.flatMap((bar, row) => drawBar(bar, topRem + (row + 0.5) * rowRem, x, bars.length > 1)),
      ...(line ? drawLine(line, x, floor, line.at > end * 0.6) : []),
    ],
  };
}

function drawBar(bar: Bar, middle: number, x: (value: number) => string, labelled: boolean): Shape[] {
  const shapes = bar.verdict ? drawVerdict(bar.verdict, bar, middle, x) : drawBlock(bar, middle, x);
  if (labelled) shapes.push({ tag: 'text', at: { x: 0, y: `${middle + 0.35}rem` }, words: shortened(bar.label) });
  return shapes;
}

function drawBlock({ value, low, high, tone = '' }: Bar, middle: number, x: (value: number) => string): Shape[] {
  const dot: Shape = { tag: 'circle', at: { class: 'dot', cx: x(value), cy: `${middle}rem`, r: '0.4rem' } };
  if (low === undefined || high === undefined) return [dot];
  const width = `${round(parseFloat(x(high)) - parseFloat(x(low)))}%`;
  return [{ tag: 'rect', at: { class: `bar ${tone}`.trim(), x: x(low), width, y: `${middle - 0.5}rem`, height: '1rem' } }, dot];
}

function drawVerdict(
  [mark, words]: NonNullable<Bar['verdict']>,
  { value, low, high }: Bar,
  middle: number,
  x: (value: number) => string,
): Shape[] {
  const line = (x1: number, x2: number, half: number): Shape => ({
    tag: 'line',
    at: { class: 'range', x1: x(x1), x2: x(x2), y1: `${middle - half}rem`, y2: `${middle + half}rem` },
  });
  const range = low === undefined || high === undefined ? [] : [line(low, high, 0), line(low, low, 0.25), line(high, high, 0.25)];
  return [
    ...range,
    { tag: 'svg', at: { x: x(value), y: `${middle}rem`, overflow: 'visible' }, inside: marks[mark] },
    {
      tag: 'text',
      at: { class: mark === 'act' ? 'act-words' : 'words', x: '100%', y: `${middle + 0.35}rem`, 'text-anchor': 'end' },
      words,
    },
  ];
}

const ring: Shape = { tag: 'circle', at: { class: 'mark', r: 7 } };
/** Each verdict has its own shape, so that none is told by color alone. */
const marks: Readonly<Record<Mark, readonly Shape[]>> = {
  act: [{ tag: 'path', at: { class: 'mark full act', d: 'M0-9 9 0 0 9-9 0Z' } }],
  unsure: [ring, { tag: 'path', at: { class: 'full', d: 'M0-7A7 7 0 0 0 0 7Z' } }],
  below: [ring],
};

function drawLine({ at, words }: Line, x: (value: number) => string, floor: number, turned: boolean): Shape[] {
  return [
    { tag: 'line', at: { class: 'level', x1: x(at), x2: x(at), y1: '0.3rem', y2: `${floor}rem` } },
    {
      tag: 'text',
      at: { class: 'level-words', x: x(at), y: '1.3rem', dx: turned ? '-0.5rem' : '0.5rem', 'text-anchor': turned ? 'end' : 'start' },
      words,
    },
  ];
}

function ticks(end: number, step: number): number[] {
  return Array.from({ length: Math.round(end / step) + 1 }, (_, at) => at * step);
}

function shortened(label: string): string {
  const letters = [...label];
  return letters.length > mostLetters ? `${letters.slice(0, mostLetters - 1).join('')}…` : label;
}

const round = (value: number): number => Number(value.toFixed(2));
