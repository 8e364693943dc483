/**
 * Daily curve of 365 values from twelve monthly means, as a sum of waves that keeps the means (within a few thousandths). Source: E. S.
 * Epstein 1991, J. Climate 4:365-368. All months count as equally long. 29 February has no day of its own. Overshoots a little at a sharp
 * bend. Unit: that of the means.
 */
const monthLengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const fullTurn = 2 * Math.PI;

export function dailyFromMonthly(means: readonly number[]): readonly number[] {
  if (means.length !== 12 || !means.every(Number.isFinite)) throw new RangeError('dailyFromMonthly: needs twelve finite means');
  const waves = [0, 1, 2, 3, 4, 5, 6].map((times) => waveOf(means, times));
  return monthLengths.flatMap((length, month) => Array.from({ length }, (_, date) => valueAt(waves, month + 0.5 + (date + 0.5) / length)));
}

/** The component with `times` waves a year. The factor restores what averaging over a month takes off a wave. */
type Wave = { times: number; cosine: number; sine: number };

function waveOf(means: readonly number[], times: number): Wave {
  const sum = (turn: (angle: number) => number) =>
    means.reduce((total, mean, month) => total + mean * turn((fullTurn * times * (month + 1)) / 12), 0);
  if (times === 0) return { times, cosine: sum(() => 1) / 12, sine: 0 };
  const angle = (Math.PI * times) / 12;
  const stretch = angle / Math.sin(angle) / (times === 6 ? 12 : 6);
  return { times, cosine: stretch * sum(Math.cos), sine: times === 6 ? 0 : stretch * sum(Math.sin) };
}

function valueAt(waves: readonly Wave[], month: number): number {
  return waves.reduce((total, { times, cosine, sine }) => {
    const angle = (fullTurn * times * month) / 12;
    return total + cosine * Math.cos(angle) + sine * Math.sin(angle);
  }, 0);
}
