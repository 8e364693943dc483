/* Types of the spelling checker, which has none of its own. */
declare module 'nspell' {
  export default function nspell(dictionary: { aff: Uint8Array; dic: Uint8Array }): { correct(word: string): boolean };
}
