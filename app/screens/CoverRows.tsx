import {
  evaporationByDepth,
  summerCooling,
  wateringSaved,
  weedControl,
  weedDepths,
  weedMass,
} from '../tables/coverBenefits';
import { CitedRows } from './CitedRows';
import { useShown } from './shown';

/** What a cover does against drying and weeds, by its depth, each number with its source. */
export function CoverRows() {
  const shown = useShown();
  const drying = evaporationByDepth.filter(({ millimetres }) => millimetres > 0);
  return (
    <CitedRows
      rows={[
        ...drying.map(({ millimetres, left }) => ({
          name: `Drying of wet ground under ${shown.estimate(millimetres, shown.units.depth)}`,
          row: left,
        })),
        { name: 'Watering saved in a season', row: wateringSaved },
        { name: 'Soil cooler in early summer', row: summerCooling },
        {
          name: 'Small weed seeds stay down from',
          row: weedControl['stops small seeds while topped up'],
        },
        { name: 'Most weeds from seed stay down from', row: weedControl['stops annuals'] },
        { name: 'Nothing is gained past', row: weedControl['no further gain'] },
        { name: 'Dry weight that thinned weeds in the field', row: weedMass },
        ...weedDepths.map(({ name, millimetres }) => ({
          name: `Advised against weeds: ${name}`,
          row: millimetres,
        })),
      ]}
    />
  );
}
