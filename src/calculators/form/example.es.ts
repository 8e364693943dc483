export const title = 'El ejemplo paso a paso, y una tabla';
