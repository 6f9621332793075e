import { bedCautions } from '../../app/core/season/cautions/cautions';
import type { DayNumber } from '../../app/core/days';
import type { BedSeason } from '../../app/core/season/input';
import type { SeasonResult } from '../../app/core/season/result';
import { runSeason } from '../../app/core/season/season';
import { bedVerdict } from '../../app/core/season/state';
import type { BedVerdict, Caution } from '../../app/core/season/verdict';
import { cautionFacts } from '../../app/document/cautionFacts';
import type { Bed, Garden } from '../../app/document/schema';
import { bedSeason } from '../../app/document/seasonInput';
import { limits } from '../../app/tables/thresholds';

export interface BedRun {
  readonly bed: Bed;
  readonly input: BedSeason;
  readonly result: SeasonResult;
  readonly verdict: BedVerdict;
  readonly cautions: readonly Caution[];
}

/** Runs one bed of a garden as the window does: typical values, verdict and cautions of `today`. */
export function runBed(garden: Garden, bed: Bed, today: DayNumber): BedRun {
  const input = bedSeason(garden, bed.id, today);
  const result = runSeason(input);
  const verdict = bedVerdict(input, result, today, limits);
  const cautions = bedCautions(
    { input, result, verdict },
    cautionFacts(garden, bed.id, today),
    limits,
  );
  return { bed, input, result, verdict, cautions };
}
