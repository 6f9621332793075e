import { join } from 'node:path';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** What finds most faults soonest runs first: a fault that is found ends the run. */
const slow = ['tests/core/season/draws.', 'tests/core/season/poorDraws', 'tests/core/ahead'];
const soonest = ['tests/core/ode/season', 'tests/core/season/', 'tests/core/'];
const rank = ({ moduleId }: TestSpecification): number => {
  if (slow.some((part) => moduleId.includes(part))) return soonest.length + 1;
  const at = soonest.findIndex((part) => moduleId.includes(part));
  return at < 0 ? soonest.length : at;
};
class SoonestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).toSorted((one, other) => rank(one) - rank(other));
  }
}

/**
 * What tests the engine, but for the laws over random beds and many draws and for the week's plan, which
 * runs whole gardens: they take minutes for each mutant that lives, and a mutant that only they would
 * kill counts as alive here. So the score is a lower bound.
 */
export default defineConfig({
  root: join(import.meta.dirname, '..'),
  test: {
    include: ['tests/{core,published}/**/*.test.ts'],
    exclude: [
      'tests/core/season/{order,limits,balance,weatherLaws,leanDraws,overFeeding,signsInDraws}.test.ts',
      'tests/core/{cautions,states}NothingJumps.test.ts',
      'tests/core/{lawn,plan}/**',
      'tests/published/verify.test.ts',
    ],
    environment: 'node',
    setupFiles: ['tests/mutation/withoutShrinking.ts'],
    // four times as fast: what is imported stays imported from fault to fault
    isolate: false,
    testTimeout: 60_000,
    sequence: { sequencer: SoonestFirst },
  },
});
