/* Next steps of the package calendar: before the install, in the first weeks, and after them. */
const ask = ['mentor', 'extension'];

export const next = {
  before: {
    links: [
      ['lists/package-day-before/', 'lists/package-arrival/'],
      ['lists/package-arrival/', 'know-how/package-bees/'],
    ],
    ask,
  },
  running: {
    links: [
      ['lists/package-first-six-weeks/', 'know-how/package-bees/'],
      ['work-it-out/syrup/', 'know-how/make-spring-syrup/'],
    ],
    ask,
  },
  over: {
    links: [
      ['lists/mite-count-day/', 'work-it-out/mite-count/'],
      ['lists/build-up-inspection/', 'know-how/first-year/'],
    ],
    ask,
  },
} as const;

export type NextKind = keyof typeof next;
