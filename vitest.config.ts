import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    // By default one processor is left idle, of two every second.
    maxWorkers: '100%',
    testTimeout: 60_000,
    hookTimeout: 60_000,
    reporters: ['default', './scripts/closing-line.ts'],
  },
});
