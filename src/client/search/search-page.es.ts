export const notLoaded = 'La búsqueda no se cargó. Todas las páginas están en la lista de abajo.';
