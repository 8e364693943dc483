// Table of the commands and their options, for arguments.ts. A kind states what an option takes: a folder or file (relative to the
// person's directory), an output folder, a day, a base path, a site's address, one of some words, or nothing (a flag). `otherwise` is the default. The
// default of a folder is relative to the project. output-folder.ts knows the default of an output folder.

export type Kind = 'folder' | 'output' | 'file' | 'day' | 'base' | 'site' | 'flag' | 'words' | readonly string[];
export interface Option {
  readonly takes: Kind;
  readonly what: string;
  readonly otherwise?: string;
}
export interface Command {
  /** Its positional arguments, as the help names them. */
  readonly words: readonly string[];
  readonly options: Readonly<Record<string, Option>>;
}

const content = { takes: 'folder', otherwise: 'content/demo-club', what: "the club's folder" } as const;
const out = { takes: 'output', what: 'where the built site goes; otherwise `dist`' } as const;

export const commands = {
  start: { words: [], options: { content } },
  dev: { words: [], options: { content } },
  build: {
    words: [],
    options: {
      content,
      out,
      base: { takes: 'base', what: 'the folder of the web site it will live in; else that of site: in club.yaml' },
      site: { takes: 'site', what: "the web site's address, for feeds and whole addresses; else that of site: in club.yaml" },
      edition: { takes: 'day', what: "the edition's day" },
      'last-good': { takes: 'flag', what: 'files with faults are published in their last good state' },
    },
  },
  check: {
    words: [],
    options: {
      content,
      format: { takes: ['text', 'json'], otherwise: 'text', what: 'how faults are printed' },
      strict: { takes: 'flag', what: 'a next-check day that has passed is a fault too; needs --on' },
      on: { takes: 'day', what: 'the day that --strict counts as today' },
      'write-ids': { takes: 'flag', what: 'writes the ids that are missing' },
    },
  },
  withdraw: {
    words: ['COLLECTION/ID', '"why"'],
    options: {
      content,
      out,
      base: { takes: 'base', what: 'the folder of the web site, where it is not that of the last edition' },
      site: { takes: 'site', what: "the web site's address, where it is not that of the last edition" },
      on: { takes: 'day', what: 'the day from which it is withdrawn; else today' },
    },
  },
  base: {
    words: ['take|compare|checked', 'COLLECTION/ID'],
    options: {
      content,
      by: { takes: 'words', what: 'the duty that compared the text; else almanac editor' },
      on: { takes: 'day', what: 'the day that counts as today' },
    },
  },
  review: {
    words: [],
    options: {
      content,
      on: { takes: 'day', what: 'the day that counts as today' },
      all: { takes: 'flag', what: 'the pages of the books too, which are for their editors' },
      reading: { takes: 'flag', what: 'how hard the pages are to read, the hardest first' },
    },
  },
  overview: {
    words: [],
    options: {
      content,
      out: { takes: 'output', what: 'where the last site was built; otherwise `dist`' },
      on: { takes: 'day', what: 'the day that counts as today' },
    },
  },
  new: {
    words: ['KIND', '"Title"'],
    options: {
      content,
      from: { takes: 'file', what: 'a table (CSV) to import' },
      write: { takes: 'flag', what: 'writes what --from shows' },
      land: { takes: 'words', what: 'of a new club: its land, a code of ISO 3166' },
      answers: { takes: 'file', what: 'of a new club: its answers, instead of questions' },
      on: { takes: 'day', what: 'of a new club: the day that counts as today' },
    },
  },
  bench: {
    words: [],
    options: {
      quick: { takes: 'flag', what: 'the largest club left out, fewer rounds' },
      part: { takes: ['builds', 'preview', 'new-club', 'check', 'pages', 'answers', 'lighthouse'], what: 'one part of it' },
      record: { takes: 'flag', what: 'a whole run, kept in tests/bench/RESULTS.md' },
    },
  },
  test: {
    words: ['PATTERN'],
    options: { slow: { takes: 'flag', what: 'the slow tests too' } },
  },
  'test:engines': {
    words: [],
    options: {
      engine: { takes: ['chromium', 'firefox', 'webkit'], what: 'one engine' },
      record: { takes: 'flag', what: 'a whole run, kept in tests/engines/RESULTS.md' },
    },
  },
} as const satisfies Record<string, Command>;

export type CommandName = keyof typeof commands;
