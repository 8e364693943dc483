/* Options of Astro's Markdown processor: the syntax of the checks, the parsed trees, and the plug-ins that turn words into a page. */
import type { UnifiedProcessorOptions } from '@astrojs/markdown-remark';
import { remarkReadTree } from '../../source/mdx-modules.ts';
import { SYNTAX } from '../../source/prose.ts';
import { rehypePage } from './rehype-page.ts';
import { remarkPage } from './remark-page.ts';

export const markdownOptions = {
  // SYNTAX already contains GitHub's additions, with their option.
  gfm: false,
  // Quotes stay as typed.
  smartypants: false,
  remarkPlugins: [...SYNTAX, remarkReadTree, remarkPage] as NonNullable<UnifiedProcessorOptions['remarkPlugins']>,
  rehypePlugins: [rehypePage],
};
