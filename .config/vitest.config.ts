import { join } from 'node:path';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: join(import.meta.dirname, '..'),
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/pages/**', '**/node_modules/**'],
    environment: 'node',
    maxWorkers: 2,
    // only what hangs comes to these: no test's outcome may hang on how fast the machine is
    testTimeout: 300_000,
    hookTimeout: 300_000,
    expect: { poll: { timeout: 120_000 } },
  },
});
