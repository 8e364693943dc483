/* Messages about files with faults: what was published in their place, or what prevents it. */
import { formatDiagnostic } from '../source/diagnostic.ts';
import type { StandIn } from './last-good.ts';

export function standInLines(result: StandIn): string[] {
  if (!result.ok)
    return [
      '',
      result.reason.hasLastGood
        ? 'These faults remain, even with every other file in its last good state:'
        : 'There is no last good state on this computer: each build without faults saves one. Without the files above, these faults remain:',
      ...result.reason.inTheWay.map((fault) => `  ${formatDiagnostic(fault)}`),
      'Nothing was built; the last good site is unchanged. Correct these lines, and run it again.',
    ];
  const { asBefore, leftOut, broughtBack } = result.value;
  return [
    '',
    'Please correct the faults above. Until then readers get:',
    ...listed('in the last good state', asBefore),
    ...listed('not at all, because no good state of it is known', leftOut),
    ...listed('again, although deleted, because other pages link to it', broughtBack),
    'Every other file is published as it is now.',
    '',
  ];
}

const listed = (words: string, paths: readonly string[]): string[] => paths.map((path) => `  ${path}  ${words}`);
