import { join } from 'node:path';
import { defineConfig } from 'vitest/config';

/**
 * What tests the engine, but for the laws over random beds: they take minutes for each mutant that
 * lives, and a mutant that only they would kill counts as alive here. So the score is a lower bound.
 */
export default defineConfig({
  root: join(import.meta.dirname, '..'),
  test: {
    include: ['tests/{core,published}/**/*.test.ts'],
    exclude: [
      'tests/core/season/{order,limits,balance,weatherLaws}.test.ts',
      'tests/core/cautionsNothingJumps.test.ts',
      'tests/core/lawn/**',
      'tests/core/season/draws.test.ts',
      'tests/published/verify.test.ts',
      'tests/core/ahead.test.ts',
    ],
    environment: 'node',
    testTimeout: 20_000,
  },
});
