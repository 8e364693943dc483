export const staysOn = 'The screen stays on while this page is open. That uses the battery.';
export const cannot = 'This browser does not let a page keep the screen on.';
export const goesOff = 'The screen goes off as it always does.';
