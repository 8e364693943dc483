/** In place of a photograph, which is not printed. */
export const photograph = (description: string): string => `[Photograph: ${description}]`;
/** What reading programs say about the accessibility of a book (schema:accessibilitySummary). */
export const accessibility: string =
  'Text with headings, lists and tables in reading order. Every drawing has a name and its content in words beside it. Letters and colors can be changed. No sound, no movement, no script.';
