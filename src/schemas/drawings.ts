/* drawings/: the club's own line drawings. The SVG is beside each file, with the same name and the ending .svg. */
import { z } from 'astro/zod';
import { list, section, shelf, words } from './fields.ts';
import { holding } from './where.ts';

export const drawings = section({
  title: words('what is drawn, in a few words, such as "A queen cell"'),
  words: words(
    'what the drawing shows, in a few sentences, for those who do not see it',
    'It hangs from the comb like a peanut in its shell. The tip points down.',
  ).describe('The shape, where it is, what tells it from its look-alike.'),
  parts: list(words('the name of the part', 'Sealed')).optional().describe('What the numbers in the drawing stand for, in their order.'),
  ...holding,
  ...shelf,
});

export type Drawing = z.infer<typeof drawings>;
