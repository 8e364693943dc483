/* local/: what only a place can say (a rule, an agency, a number to ring), where a page of a wider book asks for it by the tag Local. */
import { review, section, shelf, sources, words } from './fields.ts';
import { holding } from './where.ts';

export const local = section({
  title: words('what it is about, such as "Registering hives"'),
  sources: sources(),
  ...holding,
  ...review,
  ...shelf,
});
