/* Numbers of bees as the package calendar shows them. */
import { formatNumber } from '../../../shared/numbers/show-number.ts';

/** Rounds to the nearest hundred, because the band is not more precise. */
export const beesWords = (bees: number): string => whole(Math.round(bees / 100) * 100);
export const whole = (value: number): string => formatNumber(value, { places: 0 });
