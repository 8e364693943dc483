/* What was counted on a sticky board. */
export type Board = { readonly mites: number; readonly days: number };
