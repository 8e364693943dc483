/* Chart of winter stores: the stores and the shortfall, up to the line of the target. */
import { kilogramsToPounds } from '../../../shared/units/weight.ts';
import type { Drawing, Shape } from '../form/drawing.ts';
import type { System } from '../form/measures.ts';
import { scaleStep } from '../form/scale.ts';
import { chartLabel, wanted } from './text.en.ts';

const [left, right] = [3, 97];
const [top, floor] = [1.9, 3.6];

export function drawStores(storesKg: number, targetKg: number, units: System): Drawing {
  const shown = (kg: number) => (units === 'us' ? kilogramsToPounds(kg) : kg);
  const [stores, target] = [shown(storesKg), shown(targetKg)];
  const largest = Math.max(stores, target);
  const step = scaleStep(largest, 5);
  const end = Math.ceil((largest * 1.02) / step) * step;
  const place = (value: number) => left + (value / end) * (right - left);
  const x = (value: number) => `${place(value).toFixed(2)}%`;
  const block = (tone: string, from: number, to: number): Shape => ({
    tag: 'rect',
    at: {
      class: `bar ${tone}`.trim(),
      x: x(from),
      width: `${(place(to) - place(from)).toFixed(2)}%`,
      y: `${top}rem`,
      height: `${floor - top}rem`,
    },
  });
  const turned = target > end / 2;
  return {
    heightRem: floor + 2,
    label: chartLabel,
    shapes: [
      ...(stores > 0 ? [block('settled', 0, stores)] : []),
      ...(target > stores ? [block('watch', stores, target)] : []),
      { tag: 'line', at: { x1: x(0), x2: x(end), y1: `${floor}rem`, y2: `${floor}rem` } },
      ...Array.from({ length: Math.round(end / step) + 1 }, (_, at): Shape => ({
        tag: 'text',
        at: { x: x(at * step), y: `${floor + 1.4}rem`, 'text-anchor': at === 0 ? 'start' : at * step === end ? 'end' : 'middle' },
        words: `${Number((at * step).toFixed(2))}${at * step === end ? (units === 'us' ? ' lb' : ' kg') : ''}`,
      })),
      { tag: 'line', at: { class: 'level', x1: x(target), x2: x(target), y1: '0.3rem', y2: `${floor}rem` } },
      {
        tag: 'text',
        at: { class: 'level-words', x: x(target), y: '1.3rem', dx: turned ? '-0.5rem' : '0.5rem', 'text-anchor': turned ? 'end' : 'start' },
        words: wanted,
      },
    ],
  };
}
