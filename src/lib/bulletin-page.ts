/* What a bulletin's page shows beside its words: whom to call first, the rules of the law, its days in the year, and links to its parts. */
import * as text from './bulletin-page.en.ts';
import { readWhen } from '../../shared/season/when.ts';
import type { Bulletin } from '../schemas/bulletins.ts';
import type { Almanac } from './content.ts';
import { cited, sourceWords } from './figures.ts';
import { askOf, type Asked, type PageContext } from './page-context.ts';
import type { Part } from './render-context.ts';
import { pageExists } from './rooms.ts';
import { windowsOf, type DistrictSeason, type Windows } from './season.ts';
import type { Status } from './status.ts';

/** `office` is the one to call, where it is not the one that the page already calls. */
export type LawShown = { place: string; says: string; note?: number | undefined; office?: Asked | undefined };

export type BulletinPage = {
  status: Status;
  call: Asked | undefined;
  laws: LawShown[];
  /** The page with the whole law, where the club has one. */
  more: string | undefined;
  windows: Windows | null;
  otherwise: string;
  seasons: DistrictSeason[];
  /** `lang`: where it is not that of the page. */
  parts: { id: string; words: string; lang?: string | undefined }[];
};

/** Parts that stand open below the head of the page. The others fold, and their headings stand together at the end. */
const OPEN = ['what-you-see', 'the-field-test', 'what-looks-like-it', 'what-not-to-do'];

const LAW_PAGE = '/know-how/the-law-here/';

export function bulletinPage(almanac: Almanac, data: Bulletin, on: PageContext, parts: readonly Part[]): BulletinPage {
  const rules = data.law ?? [];
  const when = readWhen(data.when);
  // What must be reported is reported first.
  const duty = data.status === 'law' ? (rules[0]?.duty ?? data.ask) : data.ask;
  const call = askOf(almanac, duty);
  const laws = rules.map(({ place, says, source, duty: office }) => {
    const from = almanac.sources.get(source);
    return {
      place,
      says,
      note: from && on.noteOf(sourceWords(from), cited(from)),
      office: office === duty ? undefined : askOf(almanac, office),
    };
  });
  return {
    status: data.status,
    call,
    laws,
    more: pageExists(almanac, LAW_PAGE) ? `${on.around.base}${LAW_PAGE.slice(1)}` : undefined,
    windows: windowsOf(data.when, almanac.seasons),
    otherwise: when.ok && when.value.kind === 'any' ? text.anyTime : data.when,
    seasons: almanac.seasons,
    parts: [
      ...parts.filter(({ id }) => OPEN.includes(id)),
      ...(laws.length > 0 ? [{ id: 'law', words: text.law, lang: on.around.frame }] : []),
    ],
  };
}
