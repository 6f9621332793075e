import { Figured } from '../../controls/Figured';
import { at } from '../../core/season/seasonAccount';
import type { BedResults } from '../../store/contract';
import { evaporationLeft, weedControl } from '../../tables/coverBenefits';
import { percent } from '../../words/chartFormat';
import { coverWorth } from '../../words/coverWorth';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { coverDepthWhy } from '../why/bedWhys';
import { dryingWhy } from '../why/coverWhys';

const weeds = {
  smallSeeds: weedControl['stops small seeds while topped up'].typical,
  annuals: weedControl['stops annuals'].typical,
};

/** What lies on a bed today does against weeds and drying. */
export function CoverWorth({ results }: { readonly results: BedResults }) {
  const shown = useShown();
  const garden = useGarden();
  const { season, input } = results;
  const draws = useMowings((state) => state.draws[input.bedId]);
  const depth = at(season.coverDepth, season, input.today);
  const drying = evaporationLeft(depth);
  const says = coverWorth(depth, drying, weeds, shown.units);
  if (says === '') return null;
  const facts = { garden, results, draws, shown };
  return (
    <Figured
      className="small soft"
      says={says}
      figures={[
        { text: shown.estimate(depth, shown.units.depth), why: coverDepthWhy(facts) },
        { text: percent(drying), why: dryingWhy(facts) },
      ]}
    />
  );
}
