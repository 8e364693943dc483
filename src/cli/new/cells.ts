/* From a cell's words to a field's value: yes and no, digits and lists as spreadsheets write them; the rest stays as typed. */
import { inner, type Shaped } from './field-lines.ts';

const YES_NO: Record<string, boolean> = { yes: true, true: true, y: true, no: false, false: false, n: false };

/** Undefined for an empty cell. What does not fit is left as it is, for the schema to refuse. */
export function valueFrom(text: string, field: Shaped): unknown {
  const words = text.replace(/\s+/g, ' ').trim();
  if (words === '') return undefined;
  const held = inner(field);
  if (held.element)
    return text
      .split(/[;|\n]/)
      .map((item) => item.replace(/\s+/g, ' ').trim())
      .filter(Boolean);
  if (held.def.type === 'boolean') return YES_NO[words.toLowerCase()] ?? words;
  if (held.def.type === 'number') return /^-?\d+(?:\.\d+)?$/.test(words) ? Number(words) : words;
  if (held.options) return held.options.find((option) => option.toLowerCase() === words.toLowerCase()) ?? words;
  // Spreadsheets write the seconds of a time as well.
  return words.replace(/^(\d\d:\d\d):00$/, '$1');
}

/** What to write instead of a time that is not of 24 hours; null where it cannot be told. */
export function timeMeant(text: string): string | null {
  const [, hour, minute, half] = /^(\d{1,2})(?:[:.h](\d\d))?\s*(?:([ap])\.?\s*m\.?)?$/i.exec(text.trim()) ?? [];
  if (hour === undefined || (minute === undefined && half === undefined)) return null;
  const hours = half === undefined ? Number(hour) : (Number(hour) % 12) + (half.toLowerCase() === 'p' ? 12 : 0);
  return hours > 23 || Number(minute ?? 0) > 59 || (half !== undefined && Number(hour) > 12)
    ? null
    : `${String(hours).padStart(2, '0')}:${minute ?? '00'}`;
}
