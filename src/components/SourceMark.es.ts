import type * as English from './SourceMark.en.ts';

export const source: typeof English.source = (note) => `Fuente ${note}`;
