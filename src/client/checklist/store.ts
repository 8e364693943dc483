/*
 * Keeps the record in the browser. Each change is made on what the store holds at that moment, so that two tabs agree,
 * and is read back after writing. A store that is blocked, full, damaged or of a newer edition costs no tick: the page
 * goes on in memory and says so; nothing is deleted unasked.
 */
import { emptyState, readState, type ChecklistState } from './record.ts';

export type Trouble = 'blocked' | 'full' | 'damaged' | 'newer';
export type Shelf = Pick<Storage, 'getItem' | 'setItem'>;

export type Store = {
  read: () => ChecklistState;
  /** Applies a change and keeps it; the trouble is null when it was kept. */
  change: (change: (kept: ChecklistState) => ChecklistState) => void;
  trouble: () => Trouble | null;
  /** The damaged record was put away: the next change is kept again, with all that was ticked meanwhile. */
  mended: () => void;
};

/** `open` gives the browser's storage, or throws where it is blocked. */
export function openStore(open: () => Shelf, key: string): Store {
  let inMemory: ChecklistState | null = null;
  /** What was read last: it stays on the page when the store is lost under it. */
  let last = emptyState();
  let trouble: Trouble | null = null;

  function stored(): ChecklistState {
    const { kept, trouble: found } = readState(open().getItem(key));
    if (found) throw found;
    return kept;
  }

  function read(): ChecklistState {
    if (inMemory) return inMemory;
    try {
      return (last = stored());
    } catch (error) {
      trouble = typeof error === 'string' ? (error as Trouble) : 'blocked';
      return (inMemory = last);
    }
  }

  function change(make: (kept: ChecklistState) => ChecklistState): void {
    const next = make(read());
    if (trouble && trouble !== 'full') {
      inMemory = next;
      return;
    }
    const text = JSON.stringify(next);
    try {
      open().setItem(key, text);
      if (open().getItem(key) !== text) throw 0;
      inMemory = trouble = null;
    } catch {
      inMemory = next;
      trouble = 'full';
    }
  }

  return { read, change, trouble: () => trouble, mended: () => (trouble = null) };
}
