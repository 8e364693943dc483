/*
 * Stores the checklist record in the browser. Each change applies to the currently stored record, so that two tabs agree, and is read
 * back after writing. A storage that is blocked, full, damaged or of a newer edition loses no tick. The page continues in memory and says
 * so, and nothing is deleted without confirmation.
 */
import { emptyState, readState, type ChecklistState } from './record.ts';

export type Trouble = 'blocked' | 'full' | 'damaged' | 'newer';
export type Shelf = Pick<Storage, 'getItem' | 'setItem'>;

export type Store = {
  read: () => ChecklistState;
  /** Applies a change and stores it. `trouble` is null when it was stored. */
  change: (change: (state: ChecklistState) => ChecklistState) => void;
  trouble: () => Trouble | null;
  /** Call after the damaged record was moved away. The next change is stored again, with all ticks made meanwhile. */
  mended: () => void;
};

/** `open` returns the browser's storage, or throws where it is blocked. */
export function openStore(open: () => Shelf, key: string): Store {
  let inMemory: ChecklistState | null = null;
  /** The last record read. It stays on the page when the storage is lost. */
  let last = emptyState();
  let trouble: Trouble | null = null;

  function read(): ChecklistState {
    if (inMemory) return inMemory;
    try {
      const { state, trouble: found } = readState(open().getItem(key));
      if (!found) return (last = state);
      trouble = found;
    } catch {
      trouble = 'blocked';
    }
    return (inMemory = last);
  }

  function change(make: (state: ChecklistState) => ChecklistState): void {
    const next = make(read());
    if (trouble && trouble !== 'full') {
      inMemory = next;
      return;
    }
    trouble = isStored(JSON.stringify(next)) ? null : 'full';
    inMemory = trouble && next;
  }

  /** Reads back what it wrote: a full storage may drop it without an error. */
  function isStored(text: string): boolean {
    try {
      open().setItem(key, text);
      return open().getItem(key) === text;
    } catch {
      return false;
    }
  }

  return { read, change, trouble: () => trouble, mended: () => (trouble = null) };
}
