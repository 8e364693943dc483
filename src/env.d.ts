/* Types of Astro components for the compiler, and of `Astro.locals`, which a page sets for the tags in its words. */
declare module '*.astro' {
  const Component: import('astro/runtime/server/index.js').AstroComponentFactory;
  export default Component;
}

declare namespace App {
  interface Locals {
    context: import('./lib/render-context.ts').RenderContext;
    /** The page's cautions. The gravest goes between the opening and the first part. Empty on a page that places them itself. */
    cautions?: import('./lib/hazards.ts').Placed[];
    /** The parts of a long article, for links below its opening. */
    onPage?: readonly { id: string; words: string }[] | undefined;
    /** What a bulletin shows beside its words. */
    bulletin?: import('./lib/bulletin-page.ts').BulletinPage;
  }
}
