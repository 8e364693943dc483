/** The kind of a notice, before its title. */
export const kinds = { disease: 'Disease near by', recall: 'Recall', 'called off': 'Called off', law: 'New rule', other: 'Notice' };
