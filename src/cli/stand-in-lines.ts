/* Messages about files with faults: what was published in their place, or what prevents it. */
import { formatDiagnostic } from '../source/diagnostic.ts';
import type { StandIn } from './last-good.ts';

export function standInLines(result: StandIn): string[] {
  if (!result.ok)
    return [
      '',
      result.reason.hasLastGood
        ? 'These stand in the way, also with every other file in its last good state:'
        : 'There is no last good state on this computer: it is kept by each build that finds no fault. Without the files above, these stand in the way:',
      ...result.reason.inTheWay.map((fault) => `  ${formatDiagnostic(fault)}`),
      'Nothing was built; the last good site stands as it was. Mend these lines, and run it again.',
    ];
  const { asBefore, leftOut, broughtBack } = result.value;
  return [
    '',
    'The faults above stay yours to mend. Until then readers are given:',
    ...listed('in the last good state', asBefore),
    ...listed('not at all, since no good state of it is known', leftOut),
    ...listed('again, although deleted, since other pages lead there', broughtBack),
    'Every other file is published as it is now.',
    '',
  ];
}

const listed = (words: string, paths: readonly string[]): string[] => paths.map((path) => `  ${path}  ${words}`);
