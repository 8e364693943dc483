/* Astro's components for the compiler of types alone; and what a page sets in `Astro.locals` before its template, for the tags in its words. */
declare module '*.astro' {
  const Component: import('astro/runtime/server/index.js').AstroComponentFactory;
  export default Component;
}

declare namespace App {
  interface Locals {
    context: import('./lib/render-context.ts').RenderContext;
    /** The cautions of which the gravest stands between the opening and the first part; none on a page that places them itself. */
    cautions?: import('./lib/hazards.ts').Placed[];
  }
}
