/* claims.csv: which texts of the books the club has compared with their sources itself. `npm run base -- checked` writes it. */
import { z } from 'astro/zod';
import { day, list, section, words } from './fields.ts';

const row = section({
  what: words('the folder and name of an entry, such as articles/swarms'),
  day: day().describe('The day on which the club compared it.'),
  by: words('the duty that compared it, such as "disease officer"').describe("Never a person's name."),
  hash: words('the hash of the text that was compared'),
});

export const claims = section({ columns: list(z.string()), rows: list(row) });
