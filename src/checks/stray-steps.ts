/* Checks for boxes and Task tags where no step is allowed: in an article, below another step, in a quotation. */
import type { ListItem } from 'mdast';
import type { Correction } from '../../shared/result.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import { isBoxed, isSteps, isTag, plainText, walk } from '../source/prose.ts';
import type { ValidEntries } from './fields.ts';
import { atNode, isPage, lineAt, placeOf, type Page } from './place.ts';
import { stepsOf } from './steps.ts';

export const strayStepFaults = (club: ValidEntries): Diagnostic[] =>
  club.folder.entries.filter(isPage).flatMap((page) => (page.collection === 'checklists' ? oddFaults(page) : strayFaults(page)));

/** A box outside a checklist cannot be ticked. */
function strayFaults(page: Page): Diagnostic[] {
  return [...walk(page.tree)].flatMap((node): Diagnostic[] => {
    if (node.type === 'listItem' && isBoxed(node))
      return [
        atNode(page, node, {
          rule: 'step',
          field: 'a list',
          found: 'a line with a box outside a checklist',
          write: '"- " without the box',
          corrected: lineAt(page, placeOf(page, node).line)
            .replace(/\[[ xX]\] /, '')
            .replace(/ *<Task [^>]*>/, ''),
        }),
      ];
    if (isTag(node) && node.name === 'Task')
      return [
        atNode(page, node, {
          rule: 'step',
          field: 'Task',
          found: 'a Task outside a checklist',
          write: 'nothing here; only steps of a checklist have one',
        }),
      ];
    return [];
  });
}

/** Boxes in the wrong place, lines without a box among steps, and tags that belong to no step. */
function oddFaults(page: Page): Diagnostic[] {
  const steps = stepsOf(page);
  const right = new Set(steps.map(({ item }) => item));
  const straight = new Set(page.tree.children.filter(isSteps).flatMap((list) => list.children));
  const inPlace = new Set<unknown>(steps.flatMap(({ tags }) => tags));
  return [...walk(page.tree)].flatMap((node): Diagnostic[] => {
    const wrong = node.type === 'listItem' ? wrongItem(node, right.has(node), straight.has(node)) : null;
    if (wrong ?? /^-\[/.test(plainText(node))) for (const below of walk(node)) inPlace.add(below);
    if (wrong) return wrong.found ? [atNode(page, node, { rule: 'step', field: 'a step', ...wrong })] : [];
    if (isTag(node) && node.name === 'Task' && !inPlace.has(node))
      return [
        atNode(page, node, {
          rule: 'step',
          field: 'Task',
          found: 'a Task that is not in the first line of a step',
          write: 'it at the end of the line that begins "- [ ] "',
        }),
      ];
    return [];
  });
}

/** Another rule reports a line with a broken box, so this one skips it. */
function wrongItem(item: ListItem, isStep: boolean, amongSteps: boolean): Correction | null {
  if (isStep) return null;
  if (isBoxed(item))
    return { found: 'a box in a numbered list, in a quotation or below another step', write: '"- [ ] " at the start of a line' };
  if (/^\[[xX ]?\]/.test(plainText(item))) return { found: '', write: '' };
  return amongSteps ? { found: 'a line without a box among steps', write: '"- [ ] ", or a paragraph between the lists' } : null;
}
