/* What Astro's Markdown processor is told: the syntax that checks parse with, the reader's trees, and what the words of a page become. */
import type { UnifiedProcessorOptions } from '@astrojs/markdown-remark';
import { remarkReadTree } from '../../source/mdx-modules.ts';
import { SYNTAX } from '../../source/prose.ts';
import { rehypePage } from './rehype-page.ts';
import { remarkPage } from './remark-page.ts';

export const markdownOptions = {
  // GitHub's additions are in SYNTAX, with their option.
  gfm: false,
  // Quotes stay as typed.
  smartypants: false,
  remarkPlugins: [...SYNTAX, remarkReadTree, remarkPage] as NonNullable<UnifiedProcessorOptions['remarkPlugins']>,
  rehypePlugins: [rehypePage],
};
