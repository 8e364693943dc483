/* Vite configuration: few script files, names that every host serves, and content pages as modules. */
import type { AstroConfig } from 'astro';
import type { Language } from '../../shared/country/language.ts';
import { mdxModules } from '../source/mdx-modules.ts';
import { words } from './words.ts';

type ViteConfig = AstroConfig['vite'];
type Plugin = Extract<NonNullable<NonNullable<ViteConfig['plugins']>[number]>, { name: string }>;

/** Vite's helper for a dynamic import also fetches styles. Our modules have none, and it costs 0.9 kB a page. */
const plainImports: Plugin = {
  name: 'plain-imports',
  enforce: 'pre',
  configEnvironment: (name) =>
    name === 'client' ? { build: { modulePreload: { polyfill: false, resolveDependencies: () => [] } } } : undefined,
  load: (id) => (id === '\0vite/preload-helper.js' ? 'export const __vitePreload = (load) => load();' : undefined),
};

export const viteConfig = (language: Language): ViteConfig => ({
  // Some hosts serve no file whose name begins with "_". Astro would name a page's script after the page, such as [id].
  environments: {
    client: {
      build: {
        rolldownOptions: {
          output: { entryFileNames: ({ name }) => `assets/${name.replace(/\.astro.*$/, '').replace(/^_+|_+$/g, '')}.[hash].js` },
        },
      },
    },
  },
  plugins: [plainImports, words(language), mdxModules() as Plugin],
  build: {
    // One sheet for the site: every page asks for the same file, and components may use each other's classes.
    cssCodeSplit: false,
    // A one-line script that only imports the layout's is inlined, and nothing else is.
    assetsInlineLimit: (_path, content) => content.length < 200,
    rolldownOptions: {
      checks: { moduleLevelDirective: false },
      // Every page needs one file: the layout's script with its few words for days. The sums of days are in another.
      output: {
        codeSplitting: {
          groups: [
            {
              name: 'leaf',
              test: /preload-helper|client\/layout\/(?!preview|now|source-note)|calculators\/form\/window-here|shared\/(country\/language(-here)?|days\/(today|year-span|month-names))\.ts/,
            },
          ],
        },
      },
    },
  },
});
