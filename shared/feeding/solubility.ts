/**
 * The temperature below which syrup may crystallise because its sugar no longer stays dissolved. Two published lines disagree by some
 * degrees, so both are used and the answer is a pair. Older line: Herzfeld, as printed by Mohos 2010 (Confectionery and Chocolate
 * Engineering), straight between its points at 0, 20 and 40 C. Modern line: Vavrinecz 1962, as an equation (from memory). Syrup below
 * 64.4 Brix does not crystallise above freezing. Above 74 Brix, some sugar stays undissolved at any heat used here. Does not hold for
 * honey or invert syrup. Crystals can also wait for a seed. Units: Brix, C.
 */
import { bisect } from '../numbers/bisect.ts';

export type Graining =
  | { readonly state: 'never' | 'cannot-all-dissolve' }
  | { readonly state: 'below'; readonly leastC: number; readonly mostC: number }
  /** Beyond the last point of the older line. Only the modern line answers. */
  | { readonly state: 'below-modern-only'; readonly mostC: number };

const thinnestBrix = 64.4;
const thickestBrix = 74;

const olderLine = [
  { atC: 0, brix: 64.18 },
  { atC: 20, brix: 67.09 },
  { atC: 40, brix: 70.42 },
] as const;

export function grainsBelow(brix: number): Graining {
  if (brix < thinnestBrix) return { state: 'never' };
  if (brix > thickestBrix) return { state: 'cannot-all-dissolve' };
  const modernC = bisect((atC) => modernSaturationBrix(atC) - brix, -5, 80);
  const olderC = onOlderLine(brix);
  if (olderC === undefined) return { state: 'below-modern-only', mostC: modernC };
  return { state: 'below', leastC: Math.min(olderC, modernC), mostC: Math.max(olderC, modernC) };
}

/** Vavrinecz 1962. */
export function modernSaturationBrix(atC: number): number {
  return 64.447 + 0.08222 * atC + 1.6169e-3 * atC ** 2 - 1.558e-6 * atC ** 3 - 4.63e-8 * atC ** 4;
}

function onOlderLine(brix: number): number | undefined {
  const [cold, mild, warm] = olderLine;
  if (brix > warm.brix) return undefined;
  const [from, to] = brix <= mild.brix ? [cold, mild] : [mild, warm];
  return from.atC + ((brix - from.brix) / (to.brix - from.brix)) * (to.atC - from.atC);
}
