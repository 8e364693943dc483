/*
 * Converts the text of a cell to the value of a field: yes and no, digits and lists as spreadsheets write them. All other text stays as
 * typed.
 */
import { inner, type Shaped } from './field-lines.ts';

const YES_NO: Record<string, boolean> = { yes: true, true: true, y: true, no: false, false: false, n: false };

/** Undefined for an empty cell. A value that does not fit stays unchanged, and the schema refuses it. */
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
  // A choice between words and a list of them is read as words.
  if (typeof held.options?.[0] === 'string') return held.options.find((option) => option.toLowerCase() === words.toLowerCase()) ?? words;
  // Spreadsheets add seconds to a time.
  return words.replace(/^(\d\d:\d\d):00$/, '$1');
}

/** The 24-hour form of a 12-hour time, or null where it is ambiguous. */
export function timeMeant(text: string): string | null {
  const [, hour, minute, half] = /^(\d{1,2})(?:[:.h](\d\d))?\s*(?:([ap])\.?\s*m\.?)?$/i.exec(text.trim()) ?? [];
  if (hour === undefined || (minute === undefined && half === undefined)) return null;
  const hours = half === undefined ? Number(hour) : (Number(hour) % 12) + (half.toLowerCase() === 'p' ? 12 : 0);
  return hours > 23 || Number(minute ?? 0) > 59 || (half !== undefined && Number(hour) > 12)
    ? null
    : `${String(hours).padStart(2, '0')}:${minute ?? '00'}`;
}
