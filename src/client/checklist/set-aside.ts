/* Stores an unreadable record complete under a free key before a new one is begun. */
import type { Shelf } from './store.ts';

/** Throws where the browser has no space. Nothing is lost then. */
export function setAside(storage: Shelf, key: string): void {
  const text = storage.getItem(key);
  if (text === null) return;
  let number = 1;
  while (storage.getItem(`${key} set aside ${number}`) !== null) number += 1;
  const name = `${key} set aside ${number}`;
  storage.setItem(name, text);
  if (storage.getItem(name) !== text) throw new Error('not kept');
}
