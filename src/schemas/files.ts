/* files/: PDF files of the club's own, such as forms. What a form is for is in a file beside it, with the same name and the ending .yaml. */
import type { z } from 'astro/zod';
import { section, words } from './fields.ts';

export const files = section({
  title: words('what the file is called, such as "Membership form"').describe(
    'The PDF is beside it, under the same name. Without this file its title is made from its name.',
  ),
  words: words('what it is for, in a sentence', 'Print it, fill it in, and bring it to a meeting.').optional(),
});

export type ClubFile = z.infer<typeof files>;
