/* Words below the fields of a new page: its fixed headings, where the kind has them, and a remark that shows how to write. */
import { BULLETIN_PARTS } from '../../schemas/bulletins.ts';
import type { Collection } from '../../schemas/collections.ts';

type Below = { remarks: readonly string[]; words: string };

const below: Partial<Record<Collection, Below>> = {
  checklists: {
    remarks: [
      'Below come a sentence or two, then the pauses, each a heading with at most seven steps. A step begins with a verb:',
      '',
      '  ## In the house',
      '',
      '  - [ ] Read the thermometer',
      '',
      '    The reason goes below its step, indented.',
      '',
      'npm run check -- --write-ids gives each step its permanent id.',
    ],
    words: '## \n\n- [ ] \n',
  },
  bulletins: {
    remarks: ['Below come the words, under the five headings that every bulletin has. Each line of "What not to do" begins "- Do not".'],
    words: BULLETIN_PARTS.map((part) => `## ${part}\n`).join('\n'),
  },
  articles: {
    remarks: [
      'Below the dashes come the words: paragraphs, "## " before a heading, "- " before a line of a list, [words](/lists/) for a link.',
    ],
    words: '',
  },
  meetings: { remarks: ['Below the dashes come the words, if there are any: what is covered, and what to do before.'], words: '' },
};

/** Remarks for the end of the fields, and the words. Empty for a kind without words. */
export function wordsBelow(collection: Collection): { remarks: string[]; words: string } {
  const { remarks, words } = below[collection] ?? { remarks: [], words: '' };
  return {
    remarks: remarks.length === 0 ? [] : ['', ...remarks].map((line, index) => (index === 0 ? line : `# ${line}`.trimEnd())),
    words,
  };
}
