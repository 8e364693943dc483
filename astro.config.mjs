// What Astro must be told, and no more: the club's folder, the output, the base and the edition come from src/cli.
import { unified } from '@astrojs/markdown-remark';
import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import { markdownOptions } from './src/components/mdx/markdown-options.ts';
import { mdxModules } from './src/source/mdx-modules.ts';

// The bundler's own fetching of a part on a press looks for styles to bring along; ours have none, and it is 0.9 kB a page.
const plainImports = {
  name: 'plain-imports',
  enforce: 'pre',
  configEnvironment: (name) =>
    name === 'client' ? { build: { modulePreload: { polyfill: false, resolveDependencies: () => [] } } } : undefined,
  load: (id) => (id === '\0vite/preload-helper.js' ? 'export const __vitePreload = (load) => load();' : undefined),
};

export default defineConfig({
  output: 'static',
  trailingSlash: 'always',
  // Astro's default joins words over a line break ("Call112now"); plain compression does not.
  compressHTML: true,
  prerenderConflictBehavior: 'error',
  // A folder that begins with "_" is not served by some hosts.
  build: { assets: 'assets', inlineStylesheets: 'never', format: 'directory' },
  markdown: { syntaxHighlight: false, processor: unified(markdownOptions) },
  integrations: [mdx()],
  devToolbar: { enabled: false },
  vite: {
    // Some hosts serve no file whose name begins with "_"; Astro would name a page's script after the page, such as [id].
    environments: {
      client: {
        build: {
          rolldownOptions: {
            output: { entryFileNames: ({ name }) => `assets/${name.replace(/\.astro.*$/, '').replace(/^_+|_+$/g, '')}.[hash].js` },
          },
        },
      },
    },
    plugins: [plainImports, mdxModules()],
    build: {
      // A script of one line that only fetches the leaf's is written into the page; nothing else is.
      assetsInlineLimit: (path, content) => content.length < 200,
      rolldownOptions: {
        checks: { moduleLevelDirective: false },
        // What every page needs is one file: the leaf's script with the few words of days it works with; the sums of days are a file of their own.
        output: {
          codeSplitting: {
            groups: [
              {
                name: 'leaf',
                test: /preload-helper|client\/layout\/(?!faults)|calculators\/form\/window-here|shared\/days\/(today|year-span|month-names)\.ts/,
              },
            ],
          },
        },
      },
    },
  },
});
