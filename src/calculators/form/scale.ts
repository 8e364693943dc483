/* Step of a chart's scale: 1, 2 or 5 times a power of ten, so that at most `most` steps reach the largest value. */
export function scaleStep(largest: number, most: number): number {
  const size = 10 ** Math.floor(Math.log10(largest / most || 1));
  return size * ([1, 2, 5, 10].find((step) => largest / (step * size) <= most) ?? 10);
}
