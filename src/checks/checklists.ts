import type { Fault } from '../reader/fault.ts';
import type { Sound } from './fields.ts';

export function checklistFaults(_club: Sound): Fault[] {
  return [];
}
