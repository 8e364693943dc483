/* The picture of a syrup: a scale of warmth, where it may grain, and how warm it is now. */
import type { Graining } from '../../../shared/feeding/solubility.ts';
import type { Drawing, Shape } from '../parts/drawing.ts';

const [left, right] = [3, 97];
const [top, floor] = [1.9, 3.4];

export function drawGraining(graining: Graining, temperatureC: number): Drawing {
  const end = Math.max(40, Math.ceil(temperatureC / 10) * 10);
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
    told: 'A scale of warmth: the darker block is where the syrup may grain, the dashed line how warm it is.',
    shapes: [
      ...(most > 0 ? [block('watch', 0, Math.max(0, least)), block('tint', Math.max(0, least), most)] : []),
      { tag: 'line', at: { x1: x(0), x2: x(end), y1: `${floor}rem`, y2: `${floor}rem` } },
      ...Array.from({ length: end / 10 }, (_, at): Shape => ({
        tag: 'text',
        at: { x: x(at * 10), y: `${floor + 1.4}rem`, 'text-anchor': 'middle' },
        words: String(at * 10),
      })),
      { tag: 'text', at: { x: x(end), y: `${floor + 1.4}rem`, 'text-anchor': 'end' }, words: `${end} °C` },
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
        words: 'the syrup now',
      },
    ],
  };
}
