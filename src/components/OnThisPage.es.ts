export const onThisPage = 'En esta página';
export const parts = 'Partes de esta página';
