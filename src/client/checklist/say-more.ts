/* What a checklist has to say besides how many steps are done. Loaded when there is such a sentence. */
import { find } from './checklist.ts';
import * as text from './say-more.en.ts';
import type { Trouble } from './store.ts';

type More = { filed: boolean; paused: boolean; gone: number; trouble: Trouble | null };

export function say({ filed, paused, gone, trouble }: More): void {
  const place = find('progress');
  const more = [filed && text.isFiled, paused && text.isPaused, gone > 0 && text.gone(gone), trouble && text.trouble[trouble]];
  const words = ` ${more.filter(Boolean).join(' ')}`;
  // Two calls may wait for this file at once, and the second finds what the first wrote.
  if (!place.textContent.endsWith(words)) place.append(words);
}
