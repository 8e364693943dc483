/*
 * Bar chart of numbers with their likely ranges, compared with one line. A bar without a range is a dot. The scale begins at 0 and ends
 * beyond the largest end.
 */
import type { Drawing, Shape } from './drawing.ts';
import { scaleStep } from './scale.ts';

export type Bar = { readonly label: string; readonly value: number; readonly low?: number; readonly high?: number; readonly tone?: string };
export type Line = { readonly at: number; readonly words: string };

const rowRem = 2;
const topRem = 1.9;
const [left, leftWithLabels, right] = [3, 24, 97];
const mostLetters = 8;

export function rangeBars(bars: readonly Bar[], line: Line | undefined, label: string): Drawing {
  const start = bars.length > 1 ? leftWithLabels : left;
  const largest = Math.max(...bars.map((bar) => bar.high ?? bar.value), line?.at ?? 0);
  const step = scaleStep(largest, 6);
  const end = Math.max(1, Math.ceil((largest * 1.02) / step)) * step;
  const x = (value: number): string => `${round(start + (value / end) * (right - start))}%`;
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

function drawBar({ label, value, low, high, tone }: Bar, middle: number, x: (value: number) => string, labelled: boolean): Shape[] {
  const shapes: Shape[] = [{ tag: 'circle', at: { class: 'dot', cx: x(value), cy: `${middle}rem`, r: '0.4rem' } }];
  if (low !== undefined && high !== undefined) {
    const width = `${round(parseFloat(x(high)) - parseFloat(x(low)))}%`;
    shapes.unshift({ tag: 'rect', at: { class: `bar ${tone ?? ''}`.trim(), x: x(low), width, y: `${middle - 0.5}rem`, height: '1rem' } });
  }
  if (labelled) shapes.push({ tag: 'text', at: { x: 0, y: `${middle + 0.35}rem` }, words: shortened(label) });
  return shapes;
}

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
