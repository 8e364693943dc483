/* The one rule of what a reader may see; every output inherits it. */

/** Drafts appear nowhere in a built site; the preview shows them, marked. */
export const isPublished = (fields: { draft?: boolean }): boolean => fields.draft !== true || import.meta.env?.DEV === true;
