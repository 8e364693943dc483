/**
 * Parses one number as people type it: `1,5` and `1.5`, `1 1/2` and `1½`, any minus sign or an en dash before the number, stray spaces,
 * and a unit that the field allows. It never guesses: text that could be two different numbers is refused. `1,500` and `1.500` are refused, because they mean
 * fifteen hundred in one country and one and a half in another. `0,125` can only be a decimal. Groups of three digits may be separated by
 * the narrow or non-breaking spaces of printed numbers (`1 500`), but not by an ordinary space.
 */
import { err, type Accepted, type Refused } from '../result.ts';

export type TypedNumberReason =
  'empty' | 'not-a-number' | 'ambiguous-mark' | 'thousands-mark' | 'two-numbers' | 'too-many-digits' | 'unknown-unit';

export type TypedNumber = (Accepted<number> & { readonly unit: string }) | Refused<TypedNumberReason>;

/** A floating-point number cannot hold more digits exactly. */
const mostDigits = 15;

/** Replaces a printed group space while the text is parsed. A typed one makes the text invalid. */
const groupMark = '_';

/** `allowedUnits` are in lower case, without full stops. `unit` is the unit found, or '' where none was typed. */
export function readTypedNumber(text: string, allowedUnits: readonly string[] = []): TypedNumber {
  const typed = tidy(text);
  if (typed === '') return err('empty');
  const found = /^([+-]?) ?(.*?\d) ?(\D*)$/.exec(typed);
  if (!found) return err('not-a-number');
  const [, sign = '', body = '', ending = ''] = found;
  const unit = ending.toLowerCase().replaceAll('.', '').trim();
  const size = readSize(body);
  if (typeof size !== 'number') return err(size);
  if (/^[.,]/.test(ending)) return err('not-a-number');
  if (unit !== '' && !allowedUnits.includes(unit)) return err('unknown-unit', { text: ending.trim() });
  return { ok: true, value: sign === '-' && size !== 0 ? -size : size, unit };
}

function tidy(text: string): string {
  return text
    .replaceAll(groupMark, '?')
    .replace(/[\u200b-\u200d\u2060]/gu, ' ')
    .replace(/(?<=\d)[\u00a0\u2007\u2009\u202f](?=\d{3}(?!\d))/gu, groupMark)
    .replace(/[\u00bc-\u00be\u2150-\u215e]/gu, (mark) => ` ${mark.normalize('NFKC')}`)
    .replace(/\s+/gu, ' ')
    .replace(/^ ?[\u2012\u2013](?=[ \d.,])/u, '-')
    .replaceAll('\u2212', '-')
    .replaceAll('\u2044', '/')
    .trim();
}

function readSize(body: string): number | TypedNumberReason {
  const fraction = /^(?:(\d+) )?(\d+) ?\/ ?(\d+)$/.exec(body);
  if (fraction) return readFraction(fraction[1], fraction[2] ?? '', fraction[3] ?? '');
  if (/^[\d.,]+( [\d.,]+)+$/.test(body)) return 'two-numbers';
  if (body.includes(groupMark)) return readGrouped(body);
  return readDecimal(body);
}

function readFraction(whole: string | undefined, top: string, bottom: string): number | TypedNumberReason {
  if (`${whole ?? ''}${top}${bottom}`.length > mostDigits) return 'too-many-digits';
  if (Number(bottom) === 0) return 'not-a-number';
  if (whole !== undefined && Number(top) >= Number(bottom)) return 'two-numbers';
  return Number(whole ?? 0) + Number(top) / Number(bottom);
}

function readGrouped(body: string): number | TypedNumberReason {
  if (!/^[1-9]\d{0,2}(_\d{3})+([.,]\d+)?$/.test(body)) return 'two-numbers';
  return toNumber(body.replaceAll(groupMark, ''));
}

function readDecimal(body: string): number | TypedNumberReason {
  const marks = body.match(/[.,'’]/gu)?.length ?? 0;
  if (marks > 1 && /^\d{1,3}([.,'’]\d{3})*[.,'’]\d+$/u.test(body)) return 'thousands-mark';
  if (/^\d{1,3}['’]\d{3}$/u.test(body)) return 'thousands-mark';
  const found = /^(\d*)(?:[.,](\d+))?$/.exec(body);
  if (!found) return 'not-a-number';
  const [, before = '', after] = found;
  const leading = before.replace(/^0+/, '').length;
  const couldGroup = leading >= 1 && leading <= 3;
  return couldGroup && after?.length === 3 ? 'ambiguous-mark' : toNumber(body);
}

function toNumber(body: string): number | TypedNumberReason {
  const plain = body.replace(',', '.');
  const digits = plain.replace('.', '').replace(/^0+/, '');
  return digits.length > mostDigits ? 'too-many-digits' : Number(plain);
}
