/*
 * Band chart: one column per day from the least to the most, so that no line claims more than the band. The scale begins at 0. A dashed
 * line may cross it, such as the number at the start.
 */
import type { Drawing, Shape } from './drawing.ts';
import { scaleStep } from './scale.ts';
import { dayZero } from './chart.en.ts';

export type BandDay = { readonly least: number; readonly most: number };
export type Across = { readonly at: number; readonly words: string };

const [left, right] = [20, 99];
const [top, floor] = [1.4, 12];

export function band(days: readonly BandDay[], across: Across, unit: (value: number) => string, label: string): Drawing {
  const largest = Math.max(across.at, ...days.map(({ most }) => most));
  const step = scaleStep(largest, 4);
  const end = Math.ceil(largest / step) * step;
  const width = (right - left) / days.length;
  const x = (day: number) => `${(left + day * width).toFixed(2)}%`;
  const y = (value: number) => floor - (value / end) * (floor - top);
  const rem = (value: number) => `${value.toFixed(2)}rem`;
  return {
    heightRem: floor + 2,
    label,
    shapes: [
      ...Array.from({ length: Math.round(end / step) + 1 }, (_, at) => at * step).flatMap((value): Shape[] => [
        { tag: 'line', at: { class: 'hair', x1: x(0), x2: x(days.length), y1: rem(y(value)), y2: rem(y(value)) } },
        { tag: 'text', at: { x: `${left - 1.5}%`, y: rem(y(value) + 0.35), 'text-anchor': 'end' }, words: unit(value) },
      ]),
      ...days.map(({ least, most }, day): Shape => ({
        tag: 'rect',
        at: {
          class: 'column',
          x: x(day),
          width: `${(width + 0.05).toFixed(2)}%`,
          y: rem(y(most)),
          height: rem(Math.max(0.1, y(least) - y(most))),
        },
      })),
      ...days.flatMap((_, day): Shape[] =>
        day % 14 === 0
          ? [
              {
                tag: 'text',
                at: { x: x(day), y: rem(floor + 1.4), 'text-anchor': day === 0 ? 'start' : 'middle' },
                words: day === 0 ? dayZero : String(day),
              },
            ]
          : [],
      ),
      { tag: 'line', at: { class: 'level', x1: x(0), x2: x(days.length), y1: rem(y(across.at)), y2: rem(y(across.at)) } },
      { tag: 'text', at: { class: 'level-words', x: x(1), y: rem(y(across.at) - 0.5) }, words: across.words },
    ],
  };
}
