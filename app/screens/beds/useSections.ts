import { useMemo, useState } from 'react';
import { sectionFacts, type SectionFacts } from '../../charts/section/facts';
import { smallShared } from '../../charts/section/Small';
import type { SectionScale } from '../../charts/section/scale';
import type { Garden } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { useMowings } from '../store';
import { useAnsweredGarden } from '../useAnsweredGarden';
import { sectionData } from './sectionData';

interface Kept {
  readonly garden: Garden;
  readonly facts: SectionFacts;
}

/**
 * A bed whose season and garden have not changed keeps its facts, so that it is not drawn again: its
 * imagined seasons change nothing that small sections show.
 */
const kept = new WeakMap<BedResults['season'], Kept>();

function factsOf(garden: Garden, results: BedResults): SectionFacts {
  const before = kept.get(results.season);
  if (before?.garden === garden) return before.facts;
  const day = results.season.today;
  const facts = sectionFacts(sectionData({ garden, results, day, units: null }));
  kept.set(results.season, { garden, facts });
  return facts;
}

export interface Sections {
  readonly facts: ReadonlyMap<string, SectionFacts>;
  readonly shared: Pick<SectionScale, 'coverPerMillimetre' | 'gramsPerDot'>;
}

const areSame = (one: Sections['facts'], other: Sections['facts']): boolean =>
  one.size === other.size && [...one].every(([id, facts]) => other.get(id) === facts);

/** The sections of all beds that are reckoned, by bed, without marks, and what they share. */
export function useSections(): Sections {
  const bedResults = useMowings((state) => state.bedResults);
  const garden = useAnsweredGarden(bedResults);
  const facts = useMemo(
    () =>
      new Map(Object.entries(bedResults).map(([id, results]) => [id, factsOf(garden, results)])),
    [garden, bedResults],
  );
  const [held, hold] = useState({ facts });
  const now = areSame(held.facts, facts) ? held.facts : facts;
  if (now !== held.facts) hold({ facts: now });
  return useMemo(() => ({ facts: now, shared: smallShared([...now.values()]) }), [now]);
}
