/*
 * MDX syntax of a page: the tags that an author may write, and nothing else of MDX. A remark plug-in, so that checks and pages parse
 * alike. Braces, `import`, `export`, HTML and every other tag stay text, as people type them ("<3 mites", "{name}"). It must be the first
 * plug-in, because it removes extensions that @mdx-js/mdx has added before.
 */
import { mdxJsx } from 'micromark-extension-mdx-jsx';
import { mdxJsxFromMarkdown } from 'mdast-util-mdx-jsx';
import type { Code, Construct, Extension, State, TokenizeContext } from 'micromark-util-types';
import type { Processor } from 'unified';

/** The tags that an author may write. components/mdx draws them, and checks refuse any other. */
export const TAGS = ['Figure', 'Task', 'Example', 'Contact', 'Drawing', 'Day', 'Line', 'Caution', 'Local'] as const;
export type Tag = (typeof TAGS)[number];

const WHOLE = new RegExp(`^(?:</?(?:${TAGS.join('|')})(?:\\s+[a-z-]+="[^"<>{}\\n]*")*\\s*/?>\\s*)+$`);
/** Markdown constructs that MDX removes. */
const NOT_IN_MDX = ['autolink', 'codeIndented', 'htmlFlow', 'htmlText'];

export function remarkTags(this: Processor): void {
  // Replaces the extensions instead of adding to them, because the construct of import and export has no name by which it could be
  // disabled.
  const data = this.data() as { micromarkExtensions?: unknown[]; fromMarkdownExtensions?: unknown[] };
  data.micromarkExtensions = [tagSyntax(), { disable: { null: NOT_IN_MDX } }];
  data.fromMarkdownExtensions = [mdxJsxFromMarkdown()];
}

function tagSyntax(): Extension {
  const { flow, text } = mdxJsx();
  return { flow: { 60: wholeOnly(flow![60] as Construct) }, text: { 60: wholeOnly(text![60] as Construct) } };
}

/** The JSX construct with one change: where it would throw, or has found an unknown tag, "<" is text. */
function wholeOnly(construct: Construct): Construct {
  return {
    ...construct,
    tokenize(this: TokenizeContext, effects, ok, nok) {
      const from = this.now();
      let isOver = false;
      const leave =
        (way: State): State =>
        (code) => {
          isOver = true;
          return way(code);
        };
      const found: State = (code) => leave(WHOLE.test(this.sliceSerialize({ start: from, end: this.now() })) ? ok : nok)(code);
      const guarded =
        (state: State): State =>
        (code: Code) => {
          let next: State | undefined;
          try {
            next = state(code);
          } catch (error) {
            if (isOver) throw error;
            return leave(nok)(code);
          }
          return isOver || !next ? next : guarded(next);
        };
      return guarded(construct.tokenize.call(this, effects, found, leave(nok)));
    },
  };
}
