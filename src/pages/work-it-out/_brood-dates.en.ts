export const limits = [
  'Cool brood is slower, by a day or more. Chilled brood dies.',
  'Rain and wind keep a young queen in. Then she mates and lays later, or never.',
  'A hive may hold cells of several ages. The dates are of the ones you saw.',
  'Leave a hive with a young queen shut until her eggs are due: an opened hive can lose her.',
  'After laying stopped, a second queen may still lay. Look for eggs before you count on a date.',
];
export const more = 'More: {pages}.';
