import type { Cited } from '../reference';
import { countedLitres, type LotInput } from './lotInput';

/** Which sum gave the dry matter. */
export type Route = 'volume' | 'weighed container' | 'weight' | 'mown' | 'depth';

export type IngredientName =
  | 'litres'
  | 'kilograms'
  | 'count'
  | 'container litres'
  | 'area'
  | 'height'
  | 'depth'
  | 'weighed kilograms'
  | 'weighed litres'
  | 'density'
  | 'water'
  | 'water now'
  | 'outside water'
  | 'outside water when weighed'
  | 'nitrogen'
  | 'carbon'
  | 'dry mass per cm'
  | 'depth factor'
  | 'fullness'
  | 'certainty';

/** One figure that went into the sum: a cited row, or what the gardener said or measured. */
export type Ingredient =
  | { readonly name: IngredientName; readonly from: 'row'; readonly row: Cited }
  | {
      readonly name: IngredientName;
      readonly from: 'gardener';
      readonly value: number;
      readonly unit: string;
    };

/** Enough to say how the answer came about; `app/words` makes the sentences. */
export interface Why {
  readonly route: Route;
  readonly ingredients: readonly Ingredient[];
}

const gardener = (name: IngredientName, value: number, unit: string): Ingredient => ({
  name,
  from: 'gardener',
  value,
  unit,
});
const cited = (name: IngredientName, row: Cited): Ingredient => ({ name, from: 'row', row });

/** The figures of one lot's sum, in the order of its formula. */
export function whyOf(input: LotInput): Why {
  const { quantity, stuff, weighed } = input;
  const perLitre: Ingredient[] = weighed
    ? [
        gardener('weighed kilograms', weighed.kilograms, 'kg'),
        gardener('weighed litres', weighed.litres, 'L'),
        cited('water', stuff.moisturePercent),
        cited('outside water when weighed', weighed.outsideWater),
      ]
    : [cited('density', stuff.densityKgPerM3), cited('water', stuff.moisturePercent)];
  const litreRoute: Route = weighed ? 'weighed container' : 'volume';
  const [route, first] = ((): readonly [Route, readonly Ingredient[]] => {
    switch (quantity.kind) {
      case 'volume':
        return [litreRoute, [gardener('litres', quantity.litres, 'L'), ...perLitre]];
      case 'containers':
        return [
          litreRoute,
          [
            gardener('count', quantity.count, ''),
            gardener('container litres', countedLitres(input), 'L'),
            ...perLitre,
            ...(weighed ? [cited('fullness', input.fullness)] : []),
          ],
        ];
      case 'mass':
        return ['weight', [gardener('kilograms', quantity.kilograms, 'kg')]];
      case 'mown':
        return [
          'mown',
          [
            gardener('area', quantity.areaM2, 'm2'),
            gardener('height', quantity.heightMillimetres, 'mm'),
            cited('dry mass per cm', input.dryMassPerCentimetre),
          ],
        ];
      case 'depth':
        return [
          'depth',
          [
            gardener('depth', quantity.millimetres, 'mm'),
            gardener('area', input.areaM2 ?? 0, 'm2'),
            ...perLitre,
            cited('depth factor', input.depthFactor),
          ],
        ];
    }
  })();
  return {
    route,
    ingredients: [
      ...first,
      cited('water now', input.moistureNowPercent),
      ...(input.outsideWater.high > 0 ? [cited('outside water', input.outsideWater)] : []),
      cited('nitrogen', stuff.nitrogenPercent),
      gardener('carbon', stuff.carbonFraction * 100, '% of dry matter'),
      ...(input.certainty.low < input.certainty.high ? [cited('certainty', input.certainty)] : []),
    ],
  };
}
