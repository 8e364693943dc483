/* Chart of a weight check: one dot per package by its distance from the label, and the mean below with its allowance for chance. */
import { toDataValue } from '../../../shared/numbers/show-number.ts';
import type { Drawing, Shape } from '../form/drawing.ts';
import type { System } from '../form/measures.ts';
import { scaleStep } from '../form/scale.ts';
import { smallWeight } from '../form/units.ts';
import type { Judgement, Weighed } from './model.ts';
import { plain, verdictSteps } from './shown.ts';
import { chartLabel, label } from './text.en.ts';

const [left, right] = [3, 97];
const columns = 30;
const [topRem, dotRem] = [1.9, 0.85];

export function drawWeights({ 'label-g': labelG, 'weights-g': weights }: Weighed, { check, held }: Judgement, units: System): Drawing {
  const shown = smallWeight.boxes[units].fromFixed;
  const errors = weights.map((weight) => shown(weight - labelG));
  const meanError = shown(check.meanErrorG);
  const reach = meanError + shown(check.limitG ?? 0);
  const step = scaleStep(Math.max(...errors, reach, 0) - Math.min(...errors, 0) || 1, 5);
  const least = Math.floor(Math.min(...errors, -step) / step) * step;
  const most = Math.ceil(Math.max(...errors, reach, step) / step) * step;
  const place = (error: number): number => left + ((error - least) / (most - least)) * (right - left);
  const x = (error: number): string => `${place(error).toFixed(2)}%`;
  const stacks = stacked(errors, least, most);
  const floor = topRem + Math.max(...stacks.map(({ high }) => high), 3) * dotRem + 0.4;
  const middle = floor + 1.1;
  const end = middle + 1;
  const tone = held ? verdictSteps[check.verdict] : 'tint';
  return {
    heightRem: end + 2,
    label: chartLabel(units),
    shapes: [
      ...Array.from({ length: Math.round((most - least) / step) + 1 }, (_, at) => least + at * step).flatMap((error): Shape[] => [
        { tag: 'line', at: { class: 'hair', x1: x(error), x2: x(error), y1: `${topRem}rem`, y2: `${end}rem` } },
        { tag: 'text', at: { x: x(error), y: `${end + 1.4}rem`, 'text-anchor': 'middle' }, words: toDataValue(error).replace('-', '−') },
      ]),
      { tag: 'line', at: { x1: x(least), x2: x(most), y1: `${floor}rem`, y2: `${floor}rem` } },
      ...stacks.map(({ error, high }): Shape => ({
        tag: 'circle',
        at: { class: 'dot', cx: x(error), cy: `${(floor - (high - 0.5) * dotRem).toFixed(2)}rem`, r: '0.4rem' },
      })),
      ...(check.limitG
        ? [
            {
              tag: 'rect',
              at: {
                class: `bar ${tone}`,
                x: x(meanError),
                width: `${(place(reach) - place(meanError)).toFixed(2)}%`,
                y: `${middle - 0.5}rem`,
                height: '1rem',
              },
            } as const,
          ]
        : []),
      { tag: 'circle', at: { class: 'dot', cx: x(meanError), cy: `${middle}rem`, r: '0.4rem' } },
      { tag: 'line', at: { class: 'level', x1: x(0), x2: x(0), y1: '0.3rem', y2: `${end}rem` } },
      ...labelWords(label(plain(labelG, units)), x(0), place(0) > 60),
    ],
  };
}

/** Overlapping dots are stacked. */
function stacked(errors: readonly number[], least: number, most: number): { error: number; high: number }[] {
  const high = new Map<number, number>();
  return errors.map((error) => {
    const column = Math.round(((error - least) / (most - least)) * columns);
    high.set(column, (high.get(column) ?? 0) + 1);
    return { error, high: high.get(column)! };
  });
}

function labelWords(words: string, x: string, turned: boolean): Shape[] {
  return [
    {
      tag: 'text',
      at: { class: 'level-words', x, y: '1.3rem', dx: turned ? '-0.5rem' : '0.5rem', 'text-anchor': turned ? 'end' : 'start' },
      words,
    },
  ];
}
