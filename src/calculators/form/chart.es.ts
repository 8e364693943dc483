export const day = 'día';
export const dayZero = 'día 0';
