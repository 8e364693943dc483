export const sureness = {
  settled: 'well established',
  likely: 'likely',
  contested: 'sources disagree',
  habit: 'common practice, no source',
  memory: 'from memory, not opened',
};
/** After the words of a source that nobody here opened. */
export const seen = { quoted: ' (as quoted elsewhere)', memory: ' (from memory)' };
export const checked = (day: string): string => `Checked ${day}`;
