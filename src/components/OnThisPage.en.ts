export const onThisPage = 'On this page';
/** For listeners, beside the text. */
export const parts = 'Parts of this page';
