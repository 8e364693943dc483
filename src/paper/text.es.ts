import type * as English from './text.en.ts';

export const photograph: typeof English.photograph = (description) => `[Fotografía: ${description}]`;
export const accessibility =
  'Texto con títulos, listas y tablas en orden de lectura. Cada dibujo tiene un nombre y, al lado, su contenido en palabras. Las letras y los colores se pueden cambiar. Sin sonido, sin movimiento, sin programas.';
