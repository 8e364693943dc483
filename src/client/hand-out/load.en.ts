/** Why a page is not in a hand-out. */
export const noSignal =
  'This page could not be loaded. It is not in the copy on this device, or the copy is not complete yet. Open this hand-out again with signal.';
export const noPage = 'There is no page at this address. Remove it, and look for its title in the lists below.';
export const takenDown = (reason: string): string =>
  `This page was taken down, so it goes into no hand-out. Remove it here. ${reason}`.trim();
/** After "Checked ... Next check ...". */
export const past = ': past. Ask before you rely on this page';
