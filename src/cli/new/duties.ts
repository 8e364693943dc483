/* Duties that pages of the books name, with the words that a new club begins with. */
export const KNOWN_DUTIES: Readonly<Record<string, { name: string; ask: string }>> = {
  mentor: { name: 'Mentors of the club', ask: 'A second pair of eyes at your hive, or a question before you open it' },
  'swarm-line': { name: 'Swarm line of the club', ask: 'A hanging swarm; bees that go in and out of a building' },
  'education-officer': { name: 'Education officer', ask: "The beginners' course, a mentor for you, the library" },
  'meetings-line': { name: 'Meetings line', ask: 'Whether a meeting or yard day goes ahead' },
};
