/* The result list of the search, on the engine's own interface. Written with the search page. */
export function wake(_form: HTMLFormElement): void {}
