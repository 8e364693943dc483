/* Fills the output elements of a page. */
import { toDataValue } from '../../../shared/numbers/show-number.ts';

/** One output: its words and its unrounded value. Without a value the words are the reason. */
export function put(result: ParentNode, name: string, words: string, value?: number | string): void {
  const output = result.querySelector<HTMLOutputElement>(`output[name="${name}"]`)!;
  output.textContent = words;
  if (value === undefined) output.removeAttribute('data-value');
  else output.dataset.value = typeof value === 'number' ? toDataValue(value) : value;
}

/** Fills a sentence beside the outputs, marked `data-text`. */
export function show(result: ParentNode, name: string, words: string): void {
  result.querySelector(`[data-text="${name}"]`)!.textContent = words;
}
