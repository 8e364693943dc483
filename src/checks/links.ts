import type { Fault } from '../reader/fault.ts';
import type { Sound } from './fields.ts';

export function linkFaults(_club: Sound): Fault[] {
  return [];
}
