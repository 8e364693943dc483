/** In place of the days of a step that another way of starting has. */
export const notWithThisStart = 'not with this start';
/** Headings of the steps by week. */
export const groups = {
  'past-due': 'Past due',
  'this-week': 'This week',
  'next-week': 'Next week',
  later: 'Later',
  earlier: 'Earlier',
};
