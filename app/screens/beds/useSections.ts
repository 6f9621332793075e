import { useMemo, useState } from 'react';
import { sectionFacts, type SectionFacts } from '../../charts/section/facts';
import { smallShared } from '../../charts/section/Small';
import type { SectionScale } from '../../charts/section/scale';
import { anyBed } from '../../document/bedPast';
import { bedParts, keptWith } from '../../document/keptParts';
import type { Garden } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { useMowings } from '../store';
import { useAnsweredGarden } from '../useAnsweredGarden';
import { sectionData } from './sectionData';

/**
 * A bed whose season and own part of the garden have not changed keeps its facts, so that it is not
 * drawn again: its imagined seasons and other beds change nothing that small sections show.
 */
const kept = keptWith<BedResults['season'], SectionFacts>();

function factsOf(garden: Garden, results: BedResults): SectionFacts {
  const day = results.season.today;
  const make = (): SectionFacts => sectionFacts(sectionData({ garden, results, day, units: null }));
  const bed = anyBed(garden, results.bedId);
  return bed ? kept(results.season, [results.input, ...bedParts(garden, bed)], make) : make();
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
