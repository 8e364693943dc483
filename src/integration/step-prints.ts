/*
 * Ticks are filed with a print of the step's words, so that a reader sees when the words have changed. A step in another language has the
 * print of the original's words: both pages show the same record.
 */
import type { Element } from 'hast';
import { printOf } from '../../shared/address/print.ts';
import { all, first, isOf, wordsOf } from '../paper/find.ts';
import type { BuiltPage } from './built-pages.ts';

export function withStepPrints(pages: readonly BuiltPage[]): BuiltPage[] {
  const originals = new Map(pages.map((page) => [page.place, page]));
  return pages.map((page) => {
    const original = page.tongue && originals.get(page.place.slice(page.tongue.length + 1));
    const steps = original ? all(original.main, (node) => isOf(node, 'step') && node.tagName === 'li') : [];
    const html = steps.reduce(
      (text, step) => text.replace(`id="${String(step.properties.id)}"`, `$& data-print="${printIn(step)}"`),
      page.html,
    );
    return html === page.html ? page : { ...page, html };
  });
}

/** As the script of the page reads the words. */
function printIn(step: Element): string {
  const words = first(step, (node) => isOf(node, 'step-words'));
  return printOf(words ? wordsOf(words.children) : '');
}
