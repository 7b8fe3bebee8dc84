import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    // By default one processor is left idle, of two every second.
    maxWorkers: '100%',
    // No test leaves a module changed, so that each is loaded once a worker and not once a file.
    isolate: false,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    reporters: ['default', './scripts/closing-line.ts'],
  },
});
