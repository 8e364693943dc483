/* Fills the output elements of a page. */
import { toDataValue } from '../../../shared/numbers/show-number.ts';

/** One output: its words and its unrounded value. Without a value the words are the reason. */
export function put(result: HTMLElement, name: string, words: string, value?: number | string): void {
  const output = all(result).querySelector<HTMLOutputElement>(`output[name="${name}"]`)!;
  output.textContent = words;
  if (value === undefined) output.removeAttribute('data-value');
  else output.dataset.value = typeof value === 'number' ? toDataValue(value) : value;
}

/** Fills a sentence beside the outputs, marked `data-text`. */
export function show(result: HTMLElement, name: string, words: string): void {
  all(result).querySelector(`[data-text="${name}"]`)!.textContent = words;
}

/** Some outputs are in the folds after the result. */
function all(result: HTMLElement): ParentNode {
  return result.closest('.calculator')!;
}
