export const law = 'La ley';
