export const limits = 'Límites de esta calculadora';
