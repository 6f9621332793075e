import { join } from 'node:path';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: join(import.meta.dirname, '..'),
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/pages/**', '**/node_modules/**'],
    environment: 'node',
    maxWorkers: 2,
    testTimeout: 20_000,
  },
});
