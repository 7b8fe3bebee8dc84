/** `npm run test:postgres`: what needs a PostgreSQL server from the system, apart from `npm test`. */
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/postgres/*.postgres.ts'],
    globalSetup: 'test/postgres/setup.ts',
    // Most of it waits, for clocks and for connections to be missed.
    maxWorkers: 2,
    testTimeout: 120_000,
    hookTimeout: 60_000,
    reporters: ['default', './scripts/closing-line.ts'],
  },
});
