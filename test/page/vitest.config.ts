/** The page in a real browser against the real program: apart from the other tests, which need neither. */
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/page/**/*.browser.ts'],
    globalSetup: ['test/page/build.ts'],
    testTimeout: 90_000,
    expect: { poll: { timeout: 8_000 } },
    hookTimeout: 60_000,
    // One browser and one program at a time are enough for two cores.
    fileParallelism: false,
    reporters: ['default', './scripts/closing-line.ts'],
  },
});
