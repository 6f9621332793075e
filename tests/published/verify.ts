import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { ComparisonGroup } from './verify/comparison';
import { computedGroups } from './verify/computedCases';
import { readKnown } from './verify/known';
import { mixtureGroups } from './verify/mixtureCases';
import { radiationGroups } from './verify/radiationCases';
import { report, type Report } from './verify/report';
import { soilGroups } from './verify/soilCases';
import { standingShares } from './verify/standings';
import { unusedOf } from './verify/usage';
import { waterGroups } from './verify/waterCases';

/** Everything that is compared, in the order in which it is shown. */
export const groups: readonly ComparisonGroup[] = [
  ...waterGroups,
  ...radiationGroups,
  ...soilGroups,
  ...mixtureGroups,
  ...computedGroups,
];

/** Compares everything anew: the text of `RESULTS.md`, what is wrong with it, and lines to print. */
export const verify = (): Report =>
  report({
    groups,
    known: readKnown(readFileSync(join(import.meta.dirname, 'known.md'), 'utf8')),
    shares: standingShares(),
    unused: unusedOf,
  });
