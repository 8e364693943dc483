/*
 * Bar chart of date ranges on one scale of days, each from its earliest to its latest day. The start day is 0. A bar of a single day
 * stays visible.
 */
import type { Drawing, Shape } from './drawing.ts';
import { scaleStep } from './scale.ts';
import { day as dayWord } from './chart.en.ts';

export type SpanBar = { readonly label: string; readonly from: number; readonly to: number; readonly tone?: string };

const rowRem = 2;
const topRem = 1.9;
const [left, right] = [25, 97];

export function spanBars(bars: readonly SpanBar[], dayZero: string, label: string): Drawing {
  const first = Math.min(0, ...bars.map(({ from }) => from));
  const last = Math.max(0, ...bars.map(({ to }) => to));
  const step = Math.max(1, scaleStep(last - first, 5));
  const place = (day: number): number => left + ((day - first) / Math.max(1, last - first)) * (right - left);
  const x = (day: number): string => `${place(day).toFixed(2)}%`;
  const floor = topRem + bars.length * rowRem;
  const ticks = Array.from(
    { length: Math.floor(last / step) - Math.ceil(first / step) + 1 },
    (_, at) => (Math.ceil(first / step) + at) * step,
  );
  const turned = place(0) > (left + right) / 2;
  return {
    heightRem: floor + 2,
    label,
    shapes: [
      ...ticks.flatMap((day): Shape[] => [
        { tag: 'line', at: { class: 'hair', x1: x(day), x2: x(day), y1: `${topRem}rem`, y2: `${floor + 0.3}rem` } },
        { tag: 'text', at: { x: x(day), y: `${floor + 1.4}rem`, 'text-anchor': 'middle' }, words: String(day).replace('-', '−') },
      ]),
      { tag: 'text', at: { x: 0, y: `${floor + 1.4}rem` }, words: dayWord },
      { tag: 'line', at: { x1: x(first), x2: x(last), y1: `${floor}rem`, y2: `${floor}rem` } },
      ...bars.flatMap(({ label, from, to, tone = '' }, row): Shape[] => [
        { tag: 'text', at: { x: 0, y: `${topRem + (row + 0.5) * rowRem + 0.35}rem` }, words: label },
        {
          tag: 'rect',
          at: {
            class: `bar ${tone}`.trim(),
            x: x(from),
            width: `${Math.max(1.2, place(to) - place(from)).toFixed(2)}%`,
            y: `${topRem + (row + 0.5) * rowRem - 0.5}rem`,
            height: '1rem',
          },
        },
      ]),
      { tag: 'line', at: { class: 'level', x1: x(0), x2: x(0), y1: '0.3rem', y2: `${floor}rem` } },
      {
        tag: 'text',
        at: { class: 'level-words', x: x(0), y: '1.3rem', dx: turned ? '-0.5rem' : '0.5rem', 'text-anchor': turned ? 'end' : 'start' },
        words: dayZero,
      },
    ],
  };
}
