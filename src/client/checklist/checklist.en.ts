export const count = (done: number, all: number): string => `${done} of ${all}`;
export const progress = (done: number, all: number): string => `${count(done, all)} done.`;
export const next = (step: string): string => `Next: ${step}`;
export const allDone = 'All done';
