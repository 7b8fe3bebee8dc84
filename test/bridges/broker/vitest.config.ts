/** `npm run test:bridges`: what needs a mosquitto from the system, apart from `npm test`. */
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/bridges/broker/*.broker.ts'],
    testTimeout: 120_000,
    reporters: ['default', './scripts/closing-line.ts'],
  },
});
