/* Chart of a count day: each colony a dot, equal rates above each other, the middle half a bar, and the level a dashed line. */
import { formatNumber } from '../../../shared/numbers/show-number.ts';
import type { Drawing, Shape } from '../form/drawing.ts';
import type { Together } from './model.ts';
import { chart } from './text.en.ts';

const DOT_REM = 0.6;
/** Dots that are closer than this share of the width stand above each other. */
const STEP = 2.5;

const per = (share: number): string => `${Math.round(share * 100) / 100}%`;
const rem = (down: number): string => `${Math.round(down * 100) / 100}rem`;

export function drawTogether({ colonies, spread, level }: Together): Drawing {
  // An even number, so that the middle mark is whole.
  const most = 2 * Math.ceil(Math.max(1, spread.highest, level?.levelPer100 ?? 0) / 2);
  const across = (rate: number): number => 2 + (rate / most) * 95;
  const heap = new Map<number, number>();
  const dots = colonies.map(({ per100, isOver }) => {
    const column = Math.round(across(per100) / STEP);
    const below = heap.get(column) ?? 0;
    heap.set(column, below + 1);
    return { x: across(per100), below, isOver };
  });
  const foot = (Math.max(...heap.values()) + 1) * DOT_REM * 1.1 + (level ? 1.4 : 0);
  const at = level && across(level.levelPer100);
  const shapes: Shape[] = [
    { tag: 'line', at: { x1: per(2), x2: per(97), y1: rem(foot), y2: rem(foot), class: 'hair' } },
    {
      tag: 'rect',
      at: {
        x: per(across(spread.quarter)),
        width: per(Math.max(0.3, across(spread.threeQuarters) - across(spread.quarter))),
        y: rem(foot + 0.15),
        height: '0.5rem',
        class: 'bar',
      },
    },
    {
      tag: 'line',
      at: { x1: per(across(spread.middle)), x2: per(across(spread.middle)), y1: rem(foot), y2: rem(foot + 0.8), 'stroke-width': 3 },
    },
    ...(at === undefined
      ? []
      : [
          { tag: 'line' as const, at: { x1: per(at), x2: per(at), y1: rem(1.3), y2: rem(foot + 0.8), class: 'level' } },
          {
            tag: 'text' as const,
            at: { x: per(at), y: rem(1), 'text-anchor': at > 60 ? 'end' : 'start' },
            words: chart.level(level!.levelPer100),
          },
        ]),
    ...dots.map(({ x, below }): Shape => ({
      tag: 'circle',
      at: { cx: per(x), cy: rem(foot - (below + 0.7) * DOT_REM * 1.1), r: rem(DOT_REM / 2), class: 'dot' },
    })),
    ...[0, most / 2, most].map((rate, index): Shape => ({
      tag: 'text',
      at: { x: per(across(rate)), y: rem(foot + 2), 'text-anchor': ['start', 'middle', 'end'][index]! },
      words: formatNumber(rate, { places: 0 }),
    })),
  ];
  return {
    heightRem: Math.round((foot + 2.4) * 100) / 100,
    label: chart.label,
    shapes,
  };
}
