import { at } from '../../core/season/seasonAccount';
import type { BedResults } from '../../store/contract';
import { evaporationLeft, weedControl } from '../../tables/coverBenefits';
import { coverWorth } from '../../words/coverWorth';
import { useShown } from '../shown';

const weeds = {
  smallSeeds: weedControl['stops small seeds while topped up'].typical,
  annuals: weedControl['stops annuals'].typical,
};

/** What lies on a bed today does against weeds and drying. The guide has the numbers with their sources. */
export function CoverWorth({ results }: { readonly results: BedResults }) {
  const { units } = useShown();
  const { season, input } = results;
  const depth = at(season.coverDepth, season, input.today);
  const says = coverWorth(depth, evaporationLeft(depth), weeds, units);
  return says === '' ? null : <p className="small soft">{says}</p>;
}
