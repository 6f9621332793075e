import { useMemo } from 'react';
import { SectionChart } from '../../charts/section/Chart';
import type { Bed } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { dayAhead, daysAhead, sectionData } from './sectionData';

/** A bed as a cut through it, today and in four weeks. */
export function BedSection({ bed, results }: { readonly bed: Bed; readonly results: BedResults }) {
  const garden = useGarden();
  const shown = useShown();
  const { today } = results.season;
  const now = useMemo(
    () => sectionData({ garden, results, day: today, units: shown.units }),
    [garden, results, today, shown.units],
  );
  const later = dayAhead(results);
  const ahead = useMemo(
    () =>
      later === today
        ? null
        : {
            data: sectionData({ garden, results, day: later, units: null }),
            title: `${later - today === daysAhead ? 'In four weeks' : 'At the season’s end'}, ${shown.dayWord(later)}, as it stands`,
          },
    [garden, results, later, today, shown],
  );
  return <SectionChart bedName={bed.name} now={now} ahead={ahead} units={shown.chart} />;
}
