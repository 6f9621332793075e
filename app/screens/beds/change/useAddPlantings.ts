import type { Planting } from '../../../document/schema';
import type { Edited } from '../../../store/contract';
import { useMowings } from '../../store';

/** Several plantings written down as one step. */
export function useAddPlantings(
  label: (plantings: readonly unknown[]) => string,
): (plantings: readonly Omit<Planting, 'id'>[]) => Edited {
  const edit = useMowings((state) => state.edit);
  return (plantings) =>
    edit(label(plantings), (draft) => {
      const taken = new Set(draft.plantings.map(({ id }) => id));
      let number = taken.size;
      for (const planting of plantings) {
        do number += 1;
        while (taken.has(`planting-${String(number)}`));
        draft.plantings.push({ ...planting, id: `planting-${String(number)}` });
      }
    });
}
