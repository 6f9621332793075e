import type { UnitSet } from '../../amounts/unitSystem';
import type { Bed } from '../../document/schema';
import type { BedResults, PreviewBed } from '../../store/contract';
import { basisOf } from '../../tables/thresholds';
import { cautionWords } from '../../words/cautions';
import { effectHeard, type HeardStates } from '../../words/heardWords';

/** Both states of a bed as they are said. */
export const statesHeard = (bed: Bed, { verdict }: BedResults): HeardStates => ({
  id: bed.id,
  name: bed.name,
  nitrogen: verdict.state,
  cover: verdict.coverState,
});

/** What a proposed laying does, bed by bed, for whoever does not see the tables beside the fields. */
export const previewHeard = (
  previews: readonly PreviewBed[],
  beds: readonly Bed[],
  units: UnitSet,
): string =>
  previews
    .flatMap(({ bedId, before, after, cautions }) => {
      const bed = beds.find(({ id }) => id === bedId);
      if (!bed) return [];
      const heard = cautions.map((caution) => ({
        weight: caution.weight,
        says: cautionWords(caution, basisOf(caution), units).says,
      }));
      return [effectHeard(statesHeard(bed, before), statesHeard(bed, after), heard)];
    })
    .join(' ');
