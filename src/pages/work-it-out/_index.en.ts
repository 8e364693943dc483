export const title = 'Calculators';
export const lead = 'Each has its source, its limits and a worked example.';
