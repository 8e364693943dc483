/* Checks that nobody can locate an apiary. Coordinates are allowed only with a hall where the club meets. */
import type { Diagnostic } from '../source/diagnostic.ts';
import type { ValidEntries } from './fields.ts';

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
