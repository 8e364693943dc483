export const title = 'Calculadoras';
export const lead = 'Cada una tiene su fuente, sus límites y un ejemplo resuelto.';
