import type { Fault } from '../reader/fault.ts';
import type { Sound } from './fields.ts';

export function figureFaults(_club: Sound): Fault[] {
  return [];
}
