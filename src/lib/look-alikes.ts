/* A trouble beside those it is taken for: which sign shows in which of them, from the same rows as the sign finder. */
import type { Tongue } from '../../shared/country/language.ts';
import type { Almanac } from './content.ts';

type Bulletin = Almanac['bulletins'][number];
export type LookAlikes = {
  /** The trouble itself comes first. */
  troubles: { title: string; lang?: Tongue }[];
  /** `cells` has one for each trouble: how often the sign shows in it, empty where it is not a sign of it. */
  signs: { words: string; lang?: Tongue | undefined; cells: { shows: string; strong: boolean }[] }[];
};

/** Null where nothing is taken for it, or where its look-alikes have no signs. */
export function lookAlikes(almanac: Almanac, entry: Bulletin): LookAlikes | null {
  const others = (entry.data['looks-like'] ?? []).flatMap((id) => almanac.bulletins.find((other) => other.id === id) ?? []);
  const held = [entry, ...others].map(({ id, lang, data: { title, signs = [] } }) => ({ id, title, signs, ...(lang && { lang }) }));
  const troubles = held.filter(({ signs }) => signs.length > 0);
  if (troubles.length < 2 || troubles[0]!.id !== entry.id) return null;
  const telling = troubles.flatMap(({ signs }) => signs.filter(isTelling));
  const ids = [...new Set([...troubles[0]!.signs, ...telling].map(({ sign }) => sign))];
  return {
    troubles: troubles.map(({ id: _, signs: __, ...trouble }) => trouble),
    signs: ids.flatMap((id) => {
      const named = almanac.signs.find((sign) => sign.id === id);
      const shown = troubles.map(({ signs }) => signs.find(({ sign }) => sign === id));
      return named
        ? [
            {
              words: named.data.title,
              ...(named.lang && { lang: named.lang }),
              cells: shown.map((one) => ({ shows: one?.shows ?? '', strong: one !== undefined && isTelling(one) })),
            },
          ]
        : [];
    }),
  };
}

type Shown = NonNullable<Bulletin['data']['signs']>[number];
const isTelling = ({ strength, shows }: Shown): boolean => strength === 'strong' && shows !== 'never';
