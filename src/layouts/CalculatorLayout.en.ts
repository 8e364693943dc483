export const limits = 'Limits of this calculator';
