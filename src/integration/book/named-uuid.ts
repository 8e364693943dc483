/* Identifier of the book: RFC 9562, 5.5. */
import { createHash } from 'node:crypto';

/** A version 5 UUID made from a name, so that one edition always has the same one. The name space is that of URLs, A.4. */
export function namedUuid(name: string, space = '6ba7b811-9dad-11d1-80b4-00c04fd430c8'): string {
  const bytes = createHash('sha1')
    .update(Buffer.from(space.replaceAll('-', ''), 'hex'))
    .update(name, 'utf8')
    .digest()
    .subarray(0, 16);
  bytes[6] = (bytes[6]! & 0x0f) | 0x50;
  bytes[8] = (bytes[8]! & 0x3f) | 0x80;
  return bytes.toString('hex').replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}
