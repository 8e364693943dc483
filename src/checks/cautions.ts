import type { Fault } from '../reader/fault.ts';
import type { Sound } from './fields.ts';

export function cautionFaults(_club: Sound): Fault[] {
  return [];
}
