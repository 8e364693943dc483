/* Words on the scale of a chart. */
export const day = 'day';
export const dayZero = 'day 0';
