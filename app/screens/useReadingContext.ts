import { useMemo } from 'react';
import type { ReadingContext, UnitSystem } from '../amounts/amount';
import type { DayNumber } from '../core/days';
import type { Garden } from '../document/schema';
import { plantingsOn, todayOf } from '../store/selectors';
import { useGarden, useMowings } from './store';
import { cropName } from '../document/cropValues';

/** What a typed amount may name: this garden's containers, lawns, beds and what stands on them. */
export function readingContext(
  garden: Garden,
  units: UnitSystem,
  today: DayNumber,
): ReadingContext {
  return {
    units,
    containers: garden.containers,
    lawns: garden.lawns,
    places: garden.beds.map((bed) => ({
      id: bed.id,
      names: [
        bed.name,
        ...plantingsOn(garden, bed.id, today).map(({ cropId }) => cropName(garden, cropId)),
      ],
    })),
  };
}

export function useReadingContext(): ReadingContext {
  const garden = useGarden();
  const units = useMowings((state) => state.shownUnits);
  const today = useToday();
  return useMemo(() => readingContext(garden, units, today), [garden, units, today]);
}

/** The garden's today, else the computer's. */
export function useToday(): DayNumber {
  return useMowings(todayOf);
}
