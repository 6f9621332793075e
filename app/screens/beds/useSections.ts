import { useMemo } from 'react';
import type { UnitSet } from '../../amounts/unitSystem';
import { sectionFacts, type SectionFacts } from '../../charts/section/facts';
import { smallShared } from '../../charts/section/Small';
import type { SectionScale } from '../../charts/section/scale';
import type { Garden } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { useShown } from '../shown';
import { useMowings } from '../store';
import { useAnsweredGarden } from '../useAnsweredGarden';
import { sectionData } from './sectionData';

interface Kept {
  readonly garden: Garden;
  readonly units: UnitSet;
  readonly facts: SectionFacts;
}

/** A bed whose results and garden have not changed keeps its facts, so that it is not drawn again. */
const kept = new WeakMap<BedResults, Kept>();

function factsOf(garden: Garden, results: BedResults, units: UnitSet): SectionFacts {
  const before = kept.get(results);
  if (before?.garden === garden && before.units === units) return before.facts;
  const facts = sectionFacts(sectionData({ garden, results, day: results.season.today, units }));
  kept.set(results, { garden, units, facts });
  return facts;
}

export interface Sections {
  readonly facts: ReadonlyMap<string, SectionFacts>;
  readonly shared: Pick<SectionScale, 'coverPerMillimetre' | 'gramsPerDot'>;
}

/** The sections of all beds that are reckoned, by bed, and what they share. */
export function useSections(): Sections {
  const { units } = useShown();
  const bedResults = useMowings((state) => state.bedResults);
  const garden = useAnsweredGarden(bedResults);
  return useMemo(() => {
    const facts = new Map(
      Object.entries(bedResults).map(([id, results]) => [id, factsOf(garden, results, units)]),
    );
    return { facts, shared: smallShared([...facts.values()]) };
  }, [garden, units, bedResults]);
}
