/*
 * Checks that nobody can locate an apiary, and hints at private data. Coordinates are allowed only with a hall where the club meets.
 * Numbers and addresses of persons belong in club.yaml, where their consent is written.
 */
import type { Diagnostic } from '../source/diagnostic.ts';
import { walk } from '../source/prose.ts';
import { isPlaceholder } from './contacts.ts';
import type { ValidEntries } from './fields.ts';
import { atWords, isPage } from './place.ts';

/** Two numbers with three or more decimals, or degrees and minutes with north or south. */
const POSITION = /-?\d{1,2}\.\d{3,}°?\s?[NS]?\s?[,;/]\s?-?\d{1,3}\.\d{3,}|\b\d{1,2}°\s?\d{1,2}[′'’][^\n]{0,12}[NS]\b/;
const MAY_BE_FOUND = new Set(['meetings', 'sources', 'figures']);

export function privacyFaults({ folder }: ValidEntries): Diagnostic[] {
  return folder.entries
    .filter(({ collection }) => !MAY_BE_FOUND.has(collection))
    .flatMap(({ path, text }) =>
      text.split('\n').flatMap((line, index): Diagnostic[] => {
        const match = POSITION.exec(line);
        if (!match) return [];
        return [
          {
            path,
            line: index + 1,
            column: match.index + 1,
            rule: 'privacy',
            field: 'the words',
            found: `"${match[0]}", which reads like the position of a yard`,
            write: 'the district, and no place finer than that',
          },
        ];
      }),
    );
}

const MAIL = /[\w.+-]+@[\w-]+(?:\.[\w-]+)+/g;
/** Groups of digits as people write a telephone number. Spaces alone could be a large number, unless it begins with 0 or +. */
const PHONE =
  /(?<![\w.+-])(?:\+\d{1,3}[ -]?(?:\(0\) ?)?\d[\d -]{6,}\d|\(\d{2,5}\) ?\d{3,4}[ -]?\d{3,4}|0\d{1,4} \d{3,4} \d{3,4}|\d{3}-\d{3}-\d{4})(?![\d-])/g;
const STREET =
  /\b\d{1,5}[A-Za-z]? (?:\p{Lu}\p{Ll}+ ){1,3}(?:Street|Road|Lane|Avenue|Drive|Close|Court|Crescent|Terrace|Boulevard|St|Rd|Ln|Ave|Dr)\b/gu;

const OF_CLUB = 'under "contacts:" in club.yaml, with the day they agreed, and here <Contact duty="..." />';

export function privacyHints({ folder, club }: ValidEntries): Diagnostic[] {
  const known = JSON.stringify(club?.data ?? {});
  const isPrivate = (words: string): boolean => !known.includes(words) && !isPlaceholder(words);
  // Texts of a land give the numbers of its public offices.
  const pages = folder.entries.filter(isPage).filter(({ collection }) => collection !== 'local');
  return pages.flatMap((page) =>
    [...walk(page.tree)].flatMap((node): Diagnostic[] => {
      const words = node.type === 'text' ? node.value : node.type === 'link' ? node.url.replace(/^(?:mailto|tel):/, '') : '';
      // The words of such a link are its address.
      if (node.type === 'link' && (!/^(?:mailto|tel):/.test(node.url) || sameAsWords(node))) return [];
      const hints = (pattern: RegExp, what: string, write: string): Diagnostic[] =>
        [...words.matchAll(pattern)]
          .filter(([found]) => isPrivate(found))
          .map(([found]) => atWords(page, node, found, { rule: 'privacy', field: 'the words', found: `"${found}", ${what}`, write }));
      return [
        ...hints(MAIL, 'an e-mail address that is not in club.yaml', `it ${OF_CLUB}`),
        ...hints(PHONE, 'a telephone number that is not in club.yaml', `it ${OF_CLUB}`),
        ...(page.collection === 'meetings'
          ? []
          : hints(STREET, 'which reads like where somebody lives', 'the district, unless it is a public place')),
      ];
    }),
  );
}

const sameAsWords = ({ url, children }: { url: string; children: { type: string }[] }): boolean =>
  children.some((child) => child.type === 'text' && url.endsWith((child as unknown as { value: string }).value));
