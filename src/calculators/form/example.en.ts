/* Words of the worked example, on every calculator's page. */
export const title = 'The example step by step, and a table';
