/* Checks notices: each begins before it ends, ends soon, and names existing pages and districts. */
import { addDays } from '../../shared/days/day.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import { EVERY_PAGE, type Notice } from '../schemas/notices.ts';
import type { Correction } from '../../shared/result.ts';
import type { Entry } from '../source/folder.ts';
import { addressesOf, type Addresses } from './addresses.ts';
import { leadsToFile } from './files.ts';
import { fieldWrong } from './links.ts';
import type { ValidEntries, ValidEntry } from './fields.ts';
import { nearName, nearOrAll } from '../../shared/words/near-name.ts';
import { atField } from './place.ts';

/** A longer notice belongs on a page of its own. */
const MOST_DAYS = 184;

export function noticeFaults(club: ValidEntries): Diagnostic[] {
  if (club.of.notices.length === 0) return [];
  const addresses = addressesOf(club);
  return club.of.notices.flatMap((entry) => [
    ...dayFaults(entry),
    ...districtFaults(entry, club),
    ...entry.data.concerns.flatMap((address, index) => concernFaults(entry, address, index, addresses)),
  ]);
}

function dayFaults(entry: ValidEntry<Notice>): Diagnostic[] {
  const { from, until } = entry.data;
  if (until < from)
    return [
      atField(entry, ['until'], { rule: 'notice', field: 'until', found: `${until}, before from, ${from}`, write: 'a day from then on' }),
    ];
  const last = addDays(from, MOST_DAYS);
  if (until > last)
    return [
      atField(entry, ['until'], {
        rule: 'notice',
        field: 'until',
        found: `${until}, more than half a year after from, ${from}`,
        write: `a day up to ${last}, or a page of its own`,
      }),
    ];
  return [];
}

function districtFaults(entry: ValidEntry<Notice>, club: ValidEntries): Diagnostic[] {
  const { district } = entry.data;
  const ids = club.club?.data.districts.map(({ id }) => id) ?? [];
  if (district === undefined || !club.club || ids.includes(district)) return [];
  return [
    atField(entry, ['district'], {
      rule: 'notice',
      field: 'district',
      found: `"${district}", which is not among the districts of club.yaml`,
      write: nearOrAll(district, ids),
    }),
  ];
}

function concernFaults(entry: ValidEntry<Notice>, address: string, index: number, addresses: Addresses): Diagnostic[] {
  if (address === EVERY_PAGE) return [];
  const wrong = concernWrong(entry, address, addresses);
  return wrong ? [atField(entry, ['concerns', index], { rule: 'notice', field: `concerns ${index + 1}`, ...wrong })] : [];
}

function concernWrong(entry: Entry, address: string, addresses: Addresses): Correction | null {
  if (nearName(address, [EVERY_PAGE]) !== null) return { found: `"${address}"`, write: `"${EVERY_PAGE}"` };
  if (leadsToFile(address))
    return { found: `"${address}", a file, which can show no notice`, write: 'the address of the page that links to it' };
  const [page = ''] = address.split(/[?#]/);
  const wrong = fieldWrong(page, entry, addresses, addresses.club.club?.data.site);
  if (wrong) return wrong;
  return page === address ? null : { found: `"${address}", a part of a page`, write: `"${page}", since a notice is on the whole page` };
}
