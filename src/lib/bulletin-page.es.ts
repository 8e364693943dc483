export const law = 'La ley';
export const anyTime = 'todo el año';
