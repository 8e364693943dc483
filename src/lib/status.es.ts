export const tags = { settled: 'Normal', watch: 'Vigilar', act: 'Actuar', law: 'Reportar' } as const;
export const words = { ...tags, settled: 'Normal: no es urgente', law: 'Reportar por ley' } as const;
