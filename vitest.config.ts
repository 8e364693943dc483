import { defineConfig } from 'vitest/config';

/* Four projects: pure modules share their workers, while commands, builds and browser engines get a process of their own. */
const forks = { pool: 'forks' as const, testTimeout: 180_000, hookTimeout: 300_000, setupFiles: ['tests/setup/environment.ts'] };

export default defineConfig({
  test: {
    maxWorkers: 2,
    tags: [{ name: 'slow', description: 'Takes minutes. npm run test:slow runs it; npm test does not.' }],
    projects: [
      {
        test: {
          name: 'unit',
          include: ['tests/unit/**/*.test.ts', 'tests/architecture/**/*.test.ts'],
          exclude: ['tests/unit/cli/**'],
          pool: 'forks',
          testTimeout: 60_000,
        },
      },
      { test: { name: 'cli', include: ['tests/unit/cli/**/*.test.ts'], ...forks } },
      { test: { name: 'engines', include: ['tests/engines/*.test.ts'], globalSetup: 'tests/setup/build-demo.ts', ...forks } },
      // As in the browser's suite, a failure that does not repeat is tried once more, and Vitest reports the second try.
      { test: { name: 'build', include: ['tests/build/**/*.test.ts'], globalSetup: 'tests/setup/build-demo.ts', retry: 1, ...forks } },
    ],
  },
});
