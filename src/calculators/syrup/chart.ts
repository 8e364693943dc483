/* Chart of a syrup: a temperature scale, the range in which it may crystallise, and its present temperature. */
import type { Graining } from '../../../shared/feeding/solubility.ts';
import { celsiusToFahrenheit, fahrenheitToCelsius } from '../../../shared/units/temperature.ts';
import type { Drawing, Shape } from '../form/drawing.ts';
import type { System } from '../form/measures.ts';
import { chartLabel, now } from './text.en.ts';

const [left, right] = [3, 97];
const [top, floor] = [1.9, 3.4];

export function drawGraining(graining: Graining, temperatureC: number, units: System): Drawing {
  const us = units === 'us';
  const step = us ? 20 : 10;
  // The scale ends on a round number of its own degrees and begins at the freezing point of water.
  const endShown = Math.max(us ? 100 : 40, Math.ceil((us ? celsiusToFahrenheit(temperatureC) : temperatureC) / step) * step);
  const inCelsius = (shown: number) => (us ? fahrenheitToCelsius(shown) : shown);
  const end = inCelsius(endShown);
  const ticks = Array.from({ length: endShown / step }, (_, at) => at * step).filter((shown) => inCelsius(shown) >= 0);
  const place = (celsius: number) => left + (Math.max(0, celsius) / end) * (right - left);
  const x = (celsius: number) => `${place(celsius).toFixed(2)}%`;
  const block = (tone: string, from: number, to: number): Shape => ({
    tag: 'rect',
    at: {
      class: `bar ${tone}`,
      x: x(from),
      width: `${(place(to) - place(from)).toFixed(2)}%`,
      y: `${top}rem`,
      height: `${floor - top}rem`,
    },
  });
  const most = 'mostC' in graining ? Math.min(graining.mostC, end) : 0;
  const least = graining.state === 'below' ? graining.leastC : most;
  const turned = temperatureC > end * 0.6;
  return {
    heightRem: floor + 2,
    label: chartLabel,
    shapes: [
      ...(most > 0 ? [block('watch', 0, Math.max(0, least)), block('tint', Math.max(0, least), most)] : []),
      { tag: 'line', at: { x1: x(0), x2: x(end), y1: `${floor}rem`, y2: `${floor}rem` } },
      ...ticks.map((shown): Shape => ({
        tag: 'text',
        at: { x: x(inCelsius(shown)), y: `${floor + 1.4}rem`, 'text-anchor': 'middle' },
        words: String(shown),
      })),
      { tag: 'text', at: { x: x(end), y: `${floor + 1.4}rem`, 'text-anchor': 'end' }, words: `${endShown} °${us ? 'F' : 'C'}` },
      { tag: 'line', at: { class: 'level', x1: x(temperatureC), x2: x(temperatureC), y1: '0.3rem', y2: `${floor}rem` } },
      {
        tag: 'text',
        at: {
          class: 'level-words',
          x: x(temperatureC),
          y: '1.3rem',
          dx: turned ? '-0.5rem' : '0.5rem',
          'text-anchor': turned ? 'end' : 'start',
        },
        words: now,
      },
    ],
  };
}
