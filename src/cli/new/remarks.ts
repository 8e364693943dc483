/* Remark above a field in a template: its purpose, what to write, and an example where the field does not show one. */
import { z } from 'astro/zod';
import type { Shaped } from './field-lines.ts';

/** One or two sentences, taken from the schema. */
export function remark(field: z.ZodType): string {
  const wants = wantedIn(field as Shaped);
  return [description(field as Shaped), wants && `Write ${wants}${/[.!?]"$/.test(wants) ? '' : '.'}`].filter(Boolean).join(' ');
}

/** The purpose of the field, from its schema. */
export function description(field: Shaped): string | undefined {
  return (
    z.globalRegistry.get(field)?.description ?? (field.unwrap && field.def.type === 'optional' ? description(field.unwrap()) : undefined)
  );
}

/** The hint that check prints after "write", or for a list that of its items. */
function wantedIn(field: Shaped): string {
  if (field.def.type === 'optional' && field.unwrap) return wantedIn(field.unwrap());
  if (field.shape) return '';
  const hint = hintOf(field);
  if (field.element && field.element.shape) return hint;
  if (field.element) return /^a list/.test(hint) ? `a list, a line each that begins "- ": ${wantedIn(field.element)}` : hint;
  const example = (z.globalRegistry.get(field)?.examples as unknown[] | undefined)?.[0];
  return example === undefined || /\bsuch as\b/.test(hint)
    ? hint
    : `${hint}, such as ${typeof example === 'string' ? `"${example}"` : String(example)}`;
}

/** The text that check prints after "write". */
export const hintOf = (field: Shaped): string => {
  const error = (field.def as { error?: (issue: unknown) => unknown }).error?.({});
  return typeof error === 'string' ? error : '';
};
