import { unified } from '@astrojs/markdown-remark';
import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import { markdownOptions } from './src/components/mdx/markdown-options.ts';
import { almanac } from './src/integration/almanac.ts';

export default defineConfig({
  output: 'static',
  trailingSlash: 'always',
  // Astro's default joins words over a line break ("Call112now"). Plain compression does not.
  compressHTML: true,
  prerenderConflictBehavior: 'error',
  // Some hosts do not serve a folder whose name begins with "_".
  build: { assets: 'assets', inlineStylesheets: 'never', format: 'directory' },
  markdown: { syntaxHighlight: false, processor: unified(markdownOptions) },
  integrations: [mdx(), almanac()],
  devToolbar: { enabled: false },
});
